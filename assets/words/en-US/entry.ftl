### What is said beside a field about what was typed in it.

entry-out-of-range = “{ $text }” is not between { $low } and { $high }. Check the figure and its unit.

# $wanted is what the field holds.
entry-empty = { $wanted ->
    [length] This can’t be left empty. Type a length like 5-1/8, 7' 3-1/2", or 130 mm.
    [amount] This can’t be left empty. Type an amount like 12.50.
    [number] This can’t be left empty. Type a number like 12 or 12.5.
   *[date] { $units ->
        [millimeters] This can’t be left empty. Type a date like 2026-02-14.
       *[inches] This can’t be left empty. Type a date like Feb 14, 2026 or 2/14/2026.
    }
}

entry-not-a-length = “{ $text }” is not a length. Type it like 5-1/8, 7' 3-1/2", or 130 mm.
entry-zero-denominator = “{ $text }” divides by zero. Type a fraction like 3/32.
entry-number-without-unit = “{ $text }” has a number without a unit. Give each number its unit, like 7 ft 3 in.
entry-not-one-length = “{ $text }” is not one length. Type feet and inches like 7' 3-1/2", or one number with its unit.
entry-length-too-long = “{ $text }” is more than { $limit }, the longest length allowed. Check the figure and its unit.
entry-unit-missing = “{ $text }” has no unit. Write it like 5-1/8 in or 130 mm.

entry-not-an-amount = “{ $text }” is not an amount of money. Type it like 12.50.
entry-amount-too-large = “{ $text }” must be below { $limit }. Check the amount.

entry-not-a-number = “{ $text }” is not a number. Type digits, like 12 or 12.5.
entry-not-whole = “{ $text }” is not a whole number. Type digits only, like 12.

entry-not-a-date = { $units ->
    [millimeters] “{ $text }” is not a date. Type it like 2026-02-14 or 14.2.2026.
   *[inches] “{ $text }” is not a date. Type it like Feb 14, 2026 or 2/14/2026.
}
entry-day-missing = { $units ->
    [millimeters] “{ $text }” is a month without a day. Type the day too, like 2026-02-14.
   *[inches] “{ $text }” is a month without a day. Type the day too, like Feb 14, 2026.
}
entry-not-a-date-or-month = { $units ->
    [millimeters] “{ $text }” is not a date. Type it like 2025-08-14, or the month alone like 2025-08.
   *[inches] “{ $text }” is not a date. Type it like Aug 14, 2025, or the month alone like Aug 2025.
}
entry-year-out-of-range = “{ $text }” is not from { $first } to { $last }. Type a year in that range.

## Figures that can be read, but not be what the field holds

entry-negative-amount = “{ $text }” can’t be negative. Type 0 if it costs nothing.
entry-negative-gap = “{ $text }” can’t be negative. Type 0 for a closed joint.
entry-gap-too-wide = “{ $text }” is more than { $limit }; no joint opens that wide. Check the figure and its unit.
entry-before-visit = “{ $text }” is before the visit on { $visited }. Type a later date.
entry-year-built = “{ $text }” is not a year from { $first } to { $last }. Type it like 1962, or leave it empty.
