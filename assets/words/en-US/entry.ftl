### What is said beside a field about what was typed in it.

entry-out-of-range = “{ $text }” is not between { $low } and { $high }. Check the figure and its unit.
