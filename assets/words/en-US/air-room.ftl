### Weather and logger files in the Measure room.

air-weather = Weather file…
    .hint = A year of hourly weather: EPW or TMY3
air-logger = Logger file…
    .hint = Readings from this room, as CSV
air-logged = { $days ->
    [one] 1 day from { $name }
   *[other] { $days } days from { $name }
}
air-logger-remove = Remove the logger readings
air-confirm = Read { $name } like this?
air-confirm-use = Use these readings
air-confirm-cancel = Cancel
air-column-none = none
air-column-date = Date column
air-column-humidity = Humidity column
air-column-temperature = Temperature column
air-dates = Date order
air-temperatures = Temperatures in
air-room = Logger’s room
