### The room's air in the Measure room.

month-1 = Jan
month-2 = Feb
month-3 = Mar
month-4 = Apr
month-5 = May
month-6 = Jun
month-7 = Jul
month-8 = Aug
month-9 = Sep
month-10 = Oct
month-11 = Nov
month-12 = Dec
month-temperature = { $month } temperature
month-humidity = { $month } humidity
degrees-fahrenheit = °F
degrees-celsius = °C

room-humidifier = Humidifier
    .hint = One that treats the whole room or house all winter
room-humidifier-none = None
room-humidifier-runs = Runs in winter
room-winter = Air in winter
    .hint = Dry: dry skin, sparks from the carpet. Damp: fogged windows.
room-winter-dry = Dry
room-winter-usual = In between
room-winter-damp = Damp
room-winter-by-load = set by hand: { $load }
room-winter-by-class = set by humidity class
room-summer = In summer
    .hint = How the air is treated in the humid months
room-summer-cooled = Air-conditioned
room-summer-dehumidified = Dehumidifier all summer
room-summer-not-cooled = Neither
room-figures = Setpoints and moisture load
room-weather-of = Hourly weather of { $place }
room-year = Humidity in the room through the year: { $low } at its driest, { $high } at its most humid. Circles are what the hygrometer read.
room-outside = { $named ->
    [no] No town named: the air outside is taken from { $place }.
   *[yes] The air outside is that of { $place }.
}
room-range = Wood in this room settles between { $driest } and { $wettest }, { $mean } on average.
room-reading = Hygrometer today
    .hint = What it reads in the room, away from windows and vents
room-reading-temperature = Room temperature { $number }
room-reading-humidity = Room humidity { $number }
room-reading-emc = wood settles at { $moisture }
room-reading-remove = Remove room reading { $number }
room-reading-add = Add room reading
undo-remove-room-reading = Remove room reading
