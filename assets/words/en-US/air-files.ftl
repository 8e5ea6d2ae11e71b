### Weather files and loggers: what was odd about one, and why one could not be used.

air-file-empty = The file is empty. Choose another, or save it again where it was made.
air-file-too-large = The file is { $megabytes } MB; the limit is 20 MB. Cut it down to the days you need.
air-file-binary = The file is not plain text. Save it as CSV in UTF-8; workbooks, pictures, and archives can’t be read.

## Why a weather file could not be used

weather-neither-format = The file starts with “{ $line }”, so it is neither an EPW nor a TMY3 weather file. Choose an EPW file, which starts with LOCATION, or a TMY3 file, whose second line names Date, Time, Dry-bulb, and RHum.
weather-no-data-periods = The EPW file has no DATA PERIODS line, so its hours can’t be found. Download it again.
weather-records-an-hour = The EPW file has “{ $records }” records an hour; only hourly files can be read. Choose the hourly file for this place.
weather-no-column = The TMY3 file has no column “{ $missing }”. Its columns are { $found }. Keep that column when you trim the file.
weather-incomplete = { $missing } of the year’s 8,760 hours have no usable values; up to 876 can be filled in. Choose a file that covers a whole year.
weather-incomplete-unread = { $count ->
    [one] 1 line could not be read as an hour: line { $first }.
   *[other] { $count } lines could not be read as an hour, starting with line { $first }.
}
weather-gap = { $hours } hours in a row, starting { $date }, have no usable values; up to 72 can be filled in. Choose a file without that gap.

## What was odd about a weather file

weather-lines-unread = { $count ->
    [one] 1 line that is not an hour of the year was left out: line { $first }.
   *[other] { $count } lines that are not an hour of the year were left out, starting with line { $first }.
}
weather-leap-day = { $count ->
    [one] 1 hour of February 29 was left out: line { $first }.
   *[other] { $count } hours of February 29 were left out, starting with line { $first }.
}
weather-extreme-temperatures = { $count ->
    [one] 1 temperature below { $low } or above { $high } was treated as missing: line { $first }.
   *[other] { $count } temperatures below { $low } or above { $high } were treated as missing, starting with line { $first }.
}
weather-dry-air = { $count ->
    [one] 1 humidity value of 0% or less was treated as missing: line { $first }.
   *[other] { $count } humidity values of 0% or less were treated as missing, starting with line { $first }.
}
weather-wild-humidity = { $count ->
    [one] 1 humidity value above 110% was treated as missing: line { $first }.
   *[other] { $count } humidity values above 110% were treated as missing, starting with line { $first }.
}
weather-fog = { $count ->
    [one] 1 humidity value from 100% to 110% was treated as 100%: line { $first }.
   *[other] { $count } humidity values from 100% to 110% were treated as 100%, starting with line { $first }.
}
weather-hours-from-zero = The hours are numbered 0 to 23, so each was read as the hour that starts at that time.
weather-starts-with = The file starts on { $date }; its hours were put in calendar order.
weather-sorted = The hours were out of order and were sorted.
weather-repeated-hours = { $count ->
    [one] 1 hour appears again; the first value was used.
   *[other] { $count } hours appear again; the first value of each was used.
}
weather-filled = { $count ->
    [one] 1 hour without usable values was filled in along a straight line, on { $date }.
   *[other] { $count } hours without usable values were filled in along straight lines. The longest gap is { $longest ->
        [one] 1 hour
       *[other] { $longest } hours
    }, on { $date }.
}
weather-south = The place is south of the equator, so its winter is in July.

## What to check before a logger's file is read

logger-column = Column { $number }
logger-room = Room { $number }
logger-date-order = { $order ->
    [year-first] year first, 2026-01-05
    [month-first] month first, 1/5/2026
    [day-first] day first, 5/1/2026
    [seconds] seconds since 1970
   *[milliseconds] milliseconds since 1970
}
logger-doubt-date-order = “{ $example }” was read { $taken ->
    [year-first] with the year first
    [month-first] with the month first
    [day-first] with the day first
    [seconds] as seconds since 1970
   *[milliseconds] as milliseconds since 1970
}, but it could also be read { $other ->
    [year-first] with the year first
    [month-first] with the month first
    [day-first] with the day first
    [seconds] as seconds since 1970
   *[milliseconds] as milliseconds since 1970
}. Check the dates.
logger-doubt-unread-times = { $unread ->
    [one] 1 of { $lines } lines has no time that can be read.
   *[other] { $unread } of { $lines } lines have no time that can be read.
}
logger-doubt-no-temperature = No column looks like the temperature, so { $assumed } will be used.
logger-doubt-several-rooms = { $named ->
    [yes] The file holds { $count } rooms or sensors. “{ $room }” will be used unless you choose another.
   *[no] The file holds { $count } rooms or sensors. The first will be used unless you choose another.
}
logger-doubt-no-headings = There are no column headings. Check that temperature and humidity are the right columns.
logger-doubt-repeated-times = { $repeated ->
    [one] 1 of { $lines } lines has a time that came up before. Does the file hold two sensors?
   *[other] { $repeated } of { $lines } lines have a time that came up before. Does the file hold two sensors?
}
logger-doubt-temperature-unit = Temperatures around { $typical } could be °C or °F. Choose which.

## Why a logger's file could not be used

logger-no-readings = No line has a time and a number separated by a comma, semicolon, tab, or bar. The file starts with “{ $line }”. Export the readings as CSV, with the time on every line.
logger-no-humidity = No column looks like the relative humidity. The columns are { $columns }. Export the humidity too, under a heading like RH.
logger-no-humidity-unnamed = No column looks like the relative humidity. Export it too, under a heading like RH.
logger-wrong-layout = No line can be read this way. Choose different columns or a different date order.
logger-no-days = No day has 6 hours of readings; the fullest has { $fullest }. One reading counts for 2 hours at most, so choose a longer record, or one with more readings a day.

## What was odd about a logger's file

logger-lines-without-time = { $count ->
    [one] 1 line without a time was left out: line { $first }.
   *[other] { $count } lines without a time were left out, starting with line { $first }.
}
logger-lines-without-value = { $count ->
    [one] 1 line without a value was left out: line { $first }.
   *[other] { $count } lines without a value were left out, starting with line { $first }.
}
logger-humidity-faults = { $count ->
    [one] 1 humidity value below { $low } or above { $high } was left out as a sensor fault: { $worst } on line { $first }.
   *[other] { $count } humidity values below { $low } or above { $high } were left out as sensor faults, starting with line { $first }; the worst is { $worst }.
}
logger-temperature-faults = { $count ->
    [one] 1 temperature below { $low } or above { $high } was left out as a sensor fault: { $worst } on line { $first }.
   *[other] { $count } temperatures below { $low } or above { $high } were left out as sensor faults, starting with line { $first }; the worst is { $worst }.
}
logger-no-temperature = The file has no temperature, so { $assumed } was used. Wood moisture hardly depends on it.
logger-utc-times = The times are in UTC, so days run from midnight UTC.
logger-clock-back = The clock goes back on { $date }, as at the end of daylight saving time.
logger-sorted = The lines were out of order and were sorted.
logger-repeated-times = { $count ->
    [one] 1 reading has a time that comes up again; the last one was used.
   *[other] { $count } readings have a time that comes up again; the last one of each was used.
}
logger-spikes = { $count ->
    [one] 1 reading far from those around it was left out: { $humidity } and { $temperature } on { $date }.
   *[other] { $count } readings far from those around them were left out; the worst is { $humidity } and { $temperature } on { $date }.
}
logger-gaps = { $count ->
    [one] There are no readings from { $from } to { $to }.
   *[other] Readings are missing for more than a day { $count } times; the longest stretch is from { $from } to { $to }.
}
logger-short-days = { $count ->
    [one] 1 day with fewer than 6 hours of readings was left out: { $days }.
   *[other] { $count } days with fewer than 6 hours of readings were left out: { $days }.
}
logger-short-days-more = { $count } days with fewer than 6 hours of readings were left out, starting with { $days }.
