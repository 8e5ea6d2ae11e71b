### Finding a place, and what its climate is worth.

place-choose = { $total ->
    [one] One place fits. Choose it if it’s the one:
   *[other] { $total } places fit. Choose one:
}
place-nothing-typed = Type a town, a ZIP code, or coordinates, like Flagstaff, AZ or 55401.
place-no-such-zip = There is no ZIP code { $digits }. The closest numbers:
place-no-such-town = No town is called “{ $text }”. Similar names:
place-no-town-at-all = No town is called “{ $text }”. Check the spelling, or type a larger town nearby.
place-elsewhere = { $total ->
    [one] There is one elsewhere:
   *[other] There are { $total } elsewhere:
}
place-off-the-globe = Those coordinates are not on the globe. Type latitude, then longitude, like 44.98, -93.27.
place-tables-damaged = The program’s list of places is damaged. Install the program again, or type twelve months.
place-population = { $people ->
    [one] { $place }, 1 person
   *[other] { $place }, { $people } people
}

place-stations = Climate from { $stations }; the nearest station is { $distance } away.
place-far = The nearest weather station is { $distance } away. Take the climate as a rough guide, or read a weather file.
place-above = This place is { $height } above the stations around it. A weather file would be more accurate.
place-below = This place is { $height } below the stations around it. A weather file would be more accurate.
place-height-unknown = The elevation of this place isn’t known; the stations around it are at { $lowest } to { $highest }. Type the elevation.
