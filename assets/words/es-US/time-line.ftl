### The time line: gap, moisture and humidity from the install to two years ahead.

time-line = Línea de tiempo
time-line-empty = Aquí se dibujan las juntas a lo largo de las temporadas.
time-line-section = Sección { $section }, promedio
time-line-day = { $date }: { $gap }
time-line-keep-reference = Guardar esta curva para comparar
time-line-clear-reference = Quitar la comparación
time-line-kept = guardada: { $name }
time-line-squeezed = abajo: el cordón pasa su límite
time-line-torn = arriba: el cordón pasa su límite
time-line-gap = abertura
time-line-moisture = humedad de las tablas
time-line-humidity = humedad del aire
    .hint = Humedad relativa del cuarto, de 0% abajo a 100% arriba. La banda abarca nueve de cada diez años.
time-line-best-weeks = mejores semanas
time-line-about = cerca de { $gap }
time-line-no-reading = sin lectura
