### The time line: gap, moisture and humidity from the install to two years ahead.

time-line = Timeline
time-line-empty = The joints through the seasons will be drawn here.
time-line-section = Section { $section }, average
time-line-day = { $date }: { $gap }
time-line-keep-reference = Keep this curve to compare
time-line-clear-reference = Clear comparison
time-line-kept = kept: { $name }
time-line-squeezed = bead past its limit below
time-line-torn = bead past its limit above
time-line-gap = gap
time-line-moisture = moisture
time-line-humidity = humidity
    .hint = Relative humidity of the room, from 0% at the bottom to 100% at the top. The band covers nine years in ten.
time-line-best-weeks = best weeks
time-line-about = about { $gap }
time-line-no-reading = no reading
