### The room's air in the Measure room.

month-1 = Ene
month-2 = Feb
month-3 = Mar
month-4 = Abr
month-5 = May
month-6 = Jun
month-7 = Jul
month-8 = Ago
month-9 = Sep
month-10 = Oct
month-11 = Nov
month-12 = Dic
month-temperature = Temperatura de { $month }
month-humidity = Humedad de { $month }
degrees-fahrenheit = °F
degrees-celsius = °C

room-humidifier = Humidificador
    .hint = Uno que trata todo el cuarto o toda la casa durante el invierno
room-humidifier-none = No hay
room-humidifier-runs = Trabaja en invierno
room-winter = Aire en invierno
    .hint = Seco: piel reseca, chispas en la alfombra. Húmedo: ventanas empañadas.
room-winter-dry = Seco
room-winter-usual = Intermedio
room-winter-damp = Húmedo
room-winter-by-load = puesto a mano: { $load }
room-winter-by-class = puesto por clase de humedad
room-summer = En verano
    .hint = Cómo se trata el aire en los meses húmedos
room-summer-cooled = Aire acondicionado
room-summer-dehumidified = Deshumidificador
room-summer-not-cooled = Ninguno
room-figures = Ajustes del clima y humedad que agrega la casa
room-weather-of = Clima por hora de { $place }
room-year = Humedad del cuarto durante el año: { $low } en lo más seco, { $high } en lo más húmedo. Los círculos son lo que marcó el higrómetro.
room-outside = { $named ->
    [no] Sin pueblo indicado: se toma el aire exterior de { $place }.
   *[yes] El aire exterior es el de { $place }.
}
room-range = En este cuarto, la madera llega a entre { $driest } y { $wettest }, { $mean } en promedio.
room-reading = Higrómetro hoy
    .hint = Lo que marca en el cuarto, lejos de ventanas y rejillas
room-reading-temperature = Temperatura del cuarto { $number }
room-reading-humidity = Humedad del cuarto { $number }
room-reading-emc = la madera llega a { $moisture }
room-reading-remove = Quitar la lectura del cuarto { $number }
room-reading-add = Agregar lectura del cuarto
undo-remove-room-reading = Quitar lectura del cuarto
