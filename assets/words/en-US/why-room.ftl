### The Why room: what opened the joints, section by section.

why-nothing-measured = The cause shows once a gap is measured. Click a joint and type its width.
why-heading = Why the joints opened
why-method = From all readings together: we try thousands of possible histories, and those that fit the gaps, the meter, and the room count most. Ranges are right 9 times in 10.

## The causes

why-causes = Odds of each cause
why-cause-chance = { cause-label }: { chance-percent }
why-causes-remark = Wet boards and ordinary movement rule each other out; the others may come with either. How common each cause is before anything is measured is an assumption.
why-clues = Clues
why-clue-for =
    { $size ->
        [over] For: { cause-label } (odds × over { $factor })
       *[plain] For: { cause-label } (odds × { $factor })
    }
why-clue-against =
    { $size ->
        [over] Against: { cause-label } (odds ÷ over { $factor })
       *[plain] Against: { cause-label } (odds ÷ { $factor })
    }
why-clue-neither = Points to none of the causes in particular.

## All joints together

why-all-joints = All joints together
why-opening = Total opening
    .hint = Gap times length of every joint between boards, measured or not, with its 90% range
why-opening-range = { $opening } ± { $within }
why-known-to = Known within
    .hint = Half of that range. More readings narrow it.
why-known-within = ± { $share }
why-readings-enough = You have measured enough gaps for that.
why-readings-more =
    { $more ->
        [one] One more reading is enough. Take it at { $joint }.
       *[other] { $more } more readings are enough. Start at { $joint }.
    }
why-readings-never = The joints differ too much for that. Measure { $joint } next.

## A section

why-section = { $surface }, section { $section }
why-mean-gap = Average gap
    .hint = Over the joints between boards
why-mean-gap-value =
    { $joints ->
        [one] { $mean } ± { $error }, the one joint measured
       *[other] { $mean } ± { $error }, { $measured } of { $joints } joints measured
    }
why-boards-today = Boards today
    .hint = Their moisture content
why-boards-today-value =
    { $readings ->
        [0] about { $moisture } from the room’s air over the year; no readings
        [one] { $moisture } ± { $error }, 1 reading
       *[other] { $moisture } ± { $error }, { $readings } readings
    }
why-boards-at-install = Boards at install
    .hint = The moisture from which drying to today makes this gap
why-boards-at-install-value = { $moisture } ({ $low } to { $high })
why-beyond-drying = no moisture explains this gap
why-room-range = Range in this room
    .hint = The driest and wettest this room makes boards over a year
why-room-range-value = { $driest } to { $wettest }
why-closes = Closes on its own
    .hint = How much of today’s gap closes in the coming humid season
why-closes-none = none of it: it is narrowest today
why-closes-part = { $share }, down to { $left } by { $by }
why-closes-whole = all of it, by { $by }
why-drying = Drying left
    .hint = How far today’s moisture is above where this room would have it at this season, and how long 90% of that takes to dry
why-drying-value =
    { $left ->
        [dries] { $within ->
            [known] { $days ->
                [one] { $moisture }, 90% of that within 1 day
               *[other] { $moisture }, 90% of that within { $days } days
            }
           *[long] { $moisture }, over more than three years
        }
        [takes_up] { $within ->
            [known] { $days ->
                [one] none: they will take up { $moisture }, 90% of that within 1 day
               *[other] none: they will take up { $moisture }, 90% of that within { $days } days
            }
           *[long] none: they will take up { $moisture }, over more than three years
        }
       *[settled] none: they have settled
    }
why-lag = Lag behind room humidity
    .hint = How many days the boards follow behind the yearly swing of the air. Paint and thickness slow it.
why-lag-value =
    { $days ->
        [one] 1 day
       *[other] { $days } days
    }
why-lag-none = no yearly swing to speak of
why-widest = Average gap at its widest
    .hint = In the coming year, if nothing is done
why-marks = What the stamps allow
why-mark-most = { $most } at most
why-mark-source = { $source } ({ label-source-kind })
