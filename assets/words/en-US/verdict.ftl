### The verdict: three lines on top of the window and of what `assess` prints. The first line says what to
### do, the second what it costs and the chance that it lasts, in parts set apart by dots; the third how
### sure that is. While there is not enough to go on, it says what is missing.

verdict-reseal =
    { $when ->
        [on] Reseal on { $from } with { $sealant }.
        [between] Reseal between { $from } and { $to } with { $sealant }.
       *[any_time] Reseal at any time of the year with { $sealant }.
    }
verdict-reseal-fails = Don’t reseal with { $sealant }: the joints move past its rating on { $past } of their length.
verdict-too-narrow = Leave the joints unsealed: most stay narrower than { $narrowest }.
verdict-replace = Replace the boards with new ones dried to { $moisture } moisture.
verdict-as-chosen = { $option }.
verdict-done = { $option }: done on { $on }.
verdict-visit = { $on }: { $found }
verdict-not-possible = { $option }: not an option here.
verdict-water-first =
    { $count ->
        [one] Find where water is getting into section { $sections }, and let the boards dry.
       *[other] Find where water is getting into sections { $sections }, and let the boards dry.
    }

verdict-nothing-to-grip = A bead has nothing to grip. Paint the V, or open the joints up first.
verdict-then = Then: { $option }
verdict-days =
    { $days ->
        [one] 1 day on site from { $from }
       *[other] { $days } days on site from { $from }
    }
verdict-price = { $total } ({ $low } to { $high })
verdict-lasts = { chance-percent } chance it lasts through { $until }
verdict-lasts-range = could be { $low } to { $high }
# Where that range would be from about nothing to about all.
verdict-lasts-either-way = but that’s far from certain
# In place of a range of nearly 0 to 100%, where not knowing how far paint stretches makes it so wide.
verdict-lasts-paint-decides = it hangs on the paint
# The same if the paint over the bead does not crack: how far paint stretches is known least of all.
verdict-lasts-paint =
    { $band ->
        [under] under { $chance } if the paint doesn’t crack
        [over] over { $chance } if the paint doesn’t crack
       *[plain] { $chance } if the paint doesn’t crack
    }

verdict-confidence =
    { $confidence ->
        [not_yet] Not yet
        [rough] Rough
        [fairly_sure] Fairly sure
       *[sure] Sure
    }
verdict-first-boards = Draw the boards first: add a surface, enter its size, and choose a pattern.
verdict-first-gaps = Measure a few gaps: click a joint in the drawing and type its width.
verdict-first-fixes = No repair can be worked out yet. Fix the entries marked in red.
verdict-doubt-wrong-entries =
    { $count ->
        [one] 1 entry couldn’t be used.
       *[other] { $count } entries couldn’t be used.
    }
verdict-doubt-typed-gaps =
    { $count ->
        [one] One gap is very wide. It counts as typed until you say which it is.
       *[other] { $count } gaps are very wide. They count as typed until you say which they are.
    }
verdict-doubt-water =
    { $count ->
        [one] One section is wetter than the room makes it.
       *[other] { $count } sections are wetter than the room makes them.
    }
verdict-doubt-few-gaps =
    { $count ->
        [0] No gap was measured in section { $section }.
        [one] Only 1 gap was measured in section { $section }.
       *[other] Only { $count } gaps were measured in section { $section }.
    }
verdict-doubt-cause = More than one cause is possible; the likeliest: { chance-percent }.
verdict-doubt-chance = Too much about this house isn’t known: the chance the repair lasts could be anywhere from { $low } to { $high }.
verdict-doubt-paint = It hangs on how far the paint over the caulk stretches, and nobody has measured that.
verdict-doubt-place = Nobody said where the house is, so its climate is a guess.
verdict-doubt-meter = No moisture reading of the boards yet.
verdict-doubt-meter-room = The moisture meter and the room’s air don’t agree.
verdict-doubt-install-date = No install date yet.
verdict-doubt-hours = Hours are catalog rates, not timed here.
verdict-cheaper = “{ $option }” would cost less, callbacks included.
verdict-nothing-left = Nothing left to measure would change this.
verdict-helps-most = Would help most:
