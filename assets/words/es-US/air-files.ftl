### Weather files and loggers: what was odd about one, and why one could not be used.

air-file-empty = El archivo está vacío. Elija otro, o guárdelo otra vez donde se hizo.
air-file-too-large = El archivo tiene { $megabytes } MB; el límite es de 20 MB. Recórtelo a los días que necesita.
air-file-binary = El archivo no es texto simple. Guárdelo como CSV en UTF-8; no se pueden leer libros de cálculo, imágenes ni archivos comprimidos.

## Why a weather file could not be used

weather-neither-format = El archivo empieza con “{ $line }”, así que no es un archivo de clima EPW ni TMY3. Elija un EPW, que empieza con LOCATION, o un TMY3, cuya segunda línea nombra Date, Time, Dry-bulb y RHum.
weather-no-data-periods = El archivo EPW no tiene la línea DATA PERIODS, así que no se encuentran sus horas. Descárguelo otra vez.
weather-records-an-hour = El archivo EPW tiene “{ $records }” registros por hora; solo se pueden leer archivos por hora. Elija el archivo por hora de este lugar.
weather-no-column = El archivo TMY3 no tiene la columna “{ $missing }”. Sus columnas son { $found }. Conserve esa columna al recortar el archivo.
weather-incomplete = { $missing } de las 8,760 horas del año no tienen valores que sirvan; se pueden completar hasta 876. Elija un archivo que abarque un año entero.
weather-incomplete-unread = { $count ->
    [one] 1 línea no se pudo leer como una hora: línea { $first }.
   *[other] { $count } líneas no se pudieron leer como una hora, desde la línea { $first }.
}
weather-gap = { $hours } horas seguidas, desde el { $date }, no tienen valores que sirvan; se pueden completar hasta 72. Elija un archivo sin ese hueco.

## What was odd about a weather file

weather-lines-unread = { $count ->
    [one] No se tomó en cuenta 1 línea que no es una hora del año: línea { $first }.
   *[other] No se tomaron en cuenta { $count } líneas que no son horas del año, desde la línea { $first }.
}
weather-leap-day = { $count ->
    [one] No se tomó en cuenta 1 hora del 29 de febrero: línea { $first }.
   *[other] No se tomaron en cuenta { $count } horas del 29 de febrero, desde la línea { $first }.
}
weather-extreme-temperatures = { $count ->
    [one] 1 temperatura de menos de { $low } o más de { $high } se trató como faltante: línea { $first }.
   *[other] { $count } temperaturas de menos de { $low } o más de { $high } se trataron como faltantes, desde la línea { $first }.
}
weather-dry-air = { $count ->
    [one] 1 humedad de 0% o menos se trató como faltante: línea { $first }.
   *[other] { $count } humedades de 0% o menos se trataron como faltantes, desde la línea { $first }.
}
weather-wild-humidity = { $count ->
    [one] 1 humedad de más de 110% se trató como faltante: línea { $first }.
   *[other] { $count } humedades de más de 110% se trataron como faltantes, desde la línea { $first }.
}
weather-fog = { $count ->
    [one] 1 humedad de entre 100% y 110% se tomó como 100%: línea { $first }.
   *[other] { $count } humedades de entre 100% y 110% se tomaron como 100%, desde la línea { $first }.
}
weather-hours-from-zero = Las horas están numeradas de 0 a 23, así que cada una se leyó como la hora que empieza en ese momento.
weather-starts-with = El archivo empieza el { $date }; sus horas se pusieron en el orden del calendario.
weather-sorted = Las horas estaban en desorden y se ordenaron.
weather-repeated-hours = { $count ->
    [one] 1 hora aparece otra vez; se usó el primer valor.
   *[other] { $count } horas aparecen otra vez; se usó el primer valor de cada una.
}
weather-filled = { $count ->
    [one] 1 hora sin valores que sirvan se completó en línea recta, el { $date }.
   *[other] { $count } horas sin valores que sirvan se completaron en línea recta. El hueco más largo es de { $longest ->
        [one] 1 hora
       *[other] { $longest } horas
    }, el { $date }.
}
weather-south = El lugar está al sur del ecuador, así que su invierno es en julio.

## What to check before a logger's file is read

logger-column = Columna { $number }
logger-room = Cuarto { $number }
logger-date-order = { $order ->
    [year-first] año primero, 2026-01-05
    [month-first] mes primero, 1/5/2026
    [day-first] día primero, 5/1/2026
    [seconds] segundos desde 1970
   *[milliseconds] milisegundos desde 1970
}
logger-doubt-date-order = “{ $example }” se leyó { $taken ->
    [year-first] con el año primero
    [month-first] con el mes primero
    [day-first] con el día primero
    [seconds] como segundos desde 1970
   *[milliseconds] como milisegundos desde 1970
}, pero también se podría leer { $other ->
    [year-first] con el año primero
    [month-first] con el mes primero
    [day-first] con el día primero
    [seconds] como segundos desde 1970
   *[milliseconds] como milisegundos desde 1970
}. Revise las fechas.
logger-doubt-unread-times = { $unread ->
    [one] 1 de { $lines } líneas no tiene una hora que se pueda leer.
   *[other] { $unread } de { $lines } líneas no tienen una hora que se pueda leer.
}
logger-doubt-no-temperature = Ninguna columna parece la temperatura, así que se va a usar { $assumed }.
logger-doubt-several-rooms = { $named ->
    [yes] El archivo contiene { $count } cuartos o sensores. Se usa “{ $room }” a menos que elija otro.
   *[no] El archivo contiene { $count } cuartos o sensores. Se usa el primero a menos que elija otro.
}
logger-doubt-no-headings = Las columnas no tienen encabezado. Revise que la temperatura y la humedad sean las columnas correctas.
logger-doubt-repeated-times = { $repeated ->
    [one] 1 de { $lines } líneas tiene una hora que ya apareció. ¿El archivo tiene dos sensores?
   *[other] { $repeated } de { $lines } líneas tienen una hora que ya apareció. ¿El archivo tiene dos sensores?
}
logger-doubt-temperature-unit = Temperaturas de cerca de { $typical } pueden ser °C o °F. Elija cuál.

## Why a logger's file could not be used

logger-no-readings = Ninguna línea tiene una hora y un número separados por coma, punto y coma, tabulador o barra. El archivo empieza con “{ $line }”. Exporte las lecturas como CSV, con la hora en cada línea.
logger-no-humidity = Ninguna columna parece la humedad relativa. Las columnas son { $columns }. Exporte también la humedad, con un encabezado como RH.
logger-no-humidity-unnamed = Ninguna columna parece la humedad relativa. Expórtela también, con un encabezado como RH.
logger-wrong-layout = Así no se puede leer ninguna línea. Elija otras columnas u otro orden de fecha.
logger-no-days = Ningún día tiene 6 horas de lecturas; el más completo tiene { $fullest }. Una lectura cuenta 2 horas como máximo, así que elija un registro más largo, o uno con más lecturas por día.

## What was odd about a logger's file

logger-lines-without-time = { $count ->
    [one] No se tomó en cuenta 1 línea sin hora: línea { $first }.
   *[other] No se tomaron en cuenta { $count } líneas sin hora, desde la línea { $first }.
}
logger-lines-without-value = { $count ->
    [one] No se tomó en cuenta 1 línea sin valor: línea { $first }.
   *[other] No se tomaron en cuenta { $count } líneas sin valor, desde la línea { $first }.
}
logger-humidity-faults = { $count ->
    [one] No se tomó en cuenta 1 humedad de menos de { $low } o más de { $high }, por falla del sensor: { $worst } en la línea { $first }.
   *[other] No se tomaron en cuenta { $count } humedades de menos de { $low } o más de { $high }, por fallas del sensor, desde la línea { $first }; la peor es { $worst }.
}
logger-temperature-faults = { $count ->
    [one] No se tomó en cuenta 1 temperatura de menos de { $low } o más de { $high }, por falla del sensor: { $worst } en la línea { $first }.
   *[other] No se tomaron en cuenta { $count } temperaturas de menos de { $low } o más de { $high }, por fallas del sensor, desde la línea { $first }; la peor es { $worst }.
}
logger-no-temperature = El archivo no tiene temperatura, así que se usó { $assumed }. La humedad de la madera casi no depende de ella.
logger-utc-times = Las horas están en UTC, así que los días van de medianoche a medianoche UTC.
logger-clock-back = El reloj retrocede el { $date }, como al final del horario de verano.
logger-sorted = Las líneas estaban en desorden y se ordenaron.
logger-repeated-times = { $count ->
    [one] 1 lectura tiene una hora que aparece otra vez; se usó la última.
   *[other] { $count } lecturas tienen una hora que aparece otra vez; se usó la última de cada una.
}
logger-spikes = { $count ->
    [one] No se tomó en cuenta 1 lectura muy distinta de las de alrededor: { $humidity } y { $temperature } el { $date }.
   *[other] No se tomaron en cuenta { $count } lecturas muy distintas de las de alrededor; la peor es { $humidity } y { $temperature } el { $date }.
}
logger-gaps = { $count ->
    [one] No hay lecturas del { $from } al { $to }.
   *[other] Faltan lecturas por más de un día { $count } veces; el tramo más largo es del { $from } al { $to }.
}
logger-short-days = { $count ->
    [one] No se tomó en cuenta 1 día con menos de 6 horas de lecturas: { $days }.
   *[other] No se tomaron en cuenta { $count } días con menos de 6 horas de lecturas: { $days }.
}
logger-short-days-more = No se tomaron en cuenta { $count } días con menos de 6 horas de lecturas, desde { $days }.
