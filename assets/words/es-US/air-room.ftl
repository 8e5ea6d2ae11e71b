### Weather and logger files in the Measure room.

air-weather = Archivo de clima…
    .hint = Un año de clima por hora: EPW o TMY3
air-logger = Archivo de registrador…
    .hint = Lecturas de este cuarto, en CSV
air-logged = { $days ->
    [one] 1 día de { $name }
   *[other] { $days } días de { $name }
}
air-logger-remove = Quitar las lecturas del registrador
air-confirm = ¿Leer { $name } así?
air-confirm-use = Usar estas lecturas
air-confirm-cancel = Cancelar
air-column-none = ninguna
air-column-date = Columna de la fecha
air-column-humidity = Columna de la humedad
air-column-temperature = Columna de la temperatura
air-dates = Orden de la fecha
air-temperatures = Temperaturas en
air-room = Cuarto del registrador
