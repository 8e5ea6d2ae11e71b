### The time line: the gap from the install to two years ahead, with moisture and humidity; the strip of boards.

time-line = Timeline
time-line-empty = The joints through the seasons will be drawn here.
time-line-section = Section { $section }, average
time-line-day = { $date }: { $gap }
time-line-keep-reference = Keep this curve to compare
time-line-clear-reference = Clear comparison
time-line-kept = kept: { $name }
time-line-squeezed = bead past its limit below
time-line-torn = bead past its limit above
time-line-with-air = Moisture and air
    .hint = Show the boards’ moisture and the room’s humidity under the gap
time-line-moisture = moisture of the boards
time-line-humidity = humidity of the room; the band covers nine years in ten
time-line-installed = installed
time-line-today = visit
time-line-sealed = sealed
time-line-widest = widest week
time-line-best-weeks = best weeks
time-line-about = about { $gap }
time-line-no-reading = no reading

strip-caption = { $count } boards of section { $section }; gaps drawn { $times } times as wide
strip-torn =
    { $count ->
        [one] bead failed at { $count } joint
       *[other] bead failed at { $count } joints
    }
strip-paint-cracked =
    { $count ->
        [one] paint cracked at { $count } joint
       *[other] paint cracked at { $count } joints
    }
