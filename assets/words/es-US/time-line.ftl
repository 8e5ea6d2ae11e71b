### The time line: the gap from the install to two years ahead, with moisture and humidity; the strip of boards.

time-line = Línea de tiempo
time-line-empty = Aquí se dibujan las juntas a lo largo de las temporadas.
time-line-section = Sección { $section }, promedio
time-line-day = { $date }: { $gap }
time-line-keep-reference = Guardar esta curva para comparar
time-line-clear-reference = Quitar la comparación
time-line-kept = guardada: { $name }
time-line-squeezed = abajo: el cordón pasa su límite
time-line-torn = arriba: el cordón pasa su límite
time-line-with-air = Humedad y aire
    .hint = Muestra la humedad de las tablas y la del cuarto debajo de la abertura
time-line-moisture = humedad de las tablas
time-line-humidity = humedad del cuarto; la banda abarca nueve de cada diez años
time-line-installed = instalación
time-line-today = visita
time-line-sealed = sellado
time-line-widest = semana más abierta
time-line-best-weeks = mejores semanas
time-line-about = cerca de { $gap }
time-line-no-reading = sin lectura

strip-caption = { $count } tablas de la sección { $section }; aberturas dibujadas { $times } veces más anchas
strip-torn =
    { $count ->
        [one] el cordón falló en { $count } junta
       *[other] el cordón falló en { $count } juntas
    }
strip-paint-cracked =
    { $count ->
        [one] pintura agrietada en { $count } junta
       *[other] pintura agrietada en { $count } juntas
    }
