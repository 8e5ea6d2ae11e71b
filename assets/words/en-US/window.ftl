### The answer above the rooms.

answer-will-last = This repair will likely last.
answer-will-not-last = This repair will likely not last.
answer-not-yet = There is not enough to go on yet.
answer-costs-less = Costs less with callbacks included:
answer-more-sure = To be more sure:
answer-missing = Still missing:
answer-go = Go to where it’s entered
