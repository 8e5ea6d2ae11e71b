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

room-weather-of = Hourly weather of { $place }
room-range = Wood in this room settles between { $driest } and { $wettest }, { $mean } on average.
room-reading = Room today
room-reading-temperature = Room temperature { $number }
room-reading-humidity = Room humidity { $number }
room-reading-emc = wood settles at { $moisture }
room-reading-remove = Remove room reading { $number }
room-reading-add = Add room reading
undo-remove-room-reading = Remove room reading
