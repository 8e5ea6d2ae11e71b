### What is said beside a field about what was typed in it.

entry-out-of-range = “{ $text }” is not between { $low } and { $high }. Check the figure and its unit.
entry-before-visit = { $date } is before the visit on { $visited }. Type a later day, or leave it empty for the best weeks.
entry-year-built = “{ $text }” is not a year up to { $last }. Type it as 1962, or leave it empty.
