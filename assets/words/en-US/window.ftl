### The answer above the rooms.

answer-will-last = This repair will likely last.
answer-will-not-last = This repair will likely not last.
answer-not-yet = There is not enough to go on yet.
answer-costs-less = Costs less, callbacks included:
answer-rough = Still a rough answer: measure more before you promise it.
answer-more =
    { $count ->
        [one] 1 more
       *[other] { $count } more
    }
answer-missing = Still missing:
answer-go = Go to where it’s entered
