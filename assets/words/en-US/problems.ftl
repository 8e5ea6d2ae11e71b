### What is wrong with a job: each message names the value and the rule, its fix says what to do and what is
### done until then.

problem-severity = { $severity ->
        [note] note
        [warning] warning
       *[error] error
    }

## Where

place-file = File, line { $line }, column { $column }
place-whole-file = File
place-surface = { $surface }: { $field }
place-part = { $part ->
        [section] { $surface }, section { $name }: { $field }
       *[opening-or-divider] { $surface }, { $name }: { $field }
    }
place-whole-section = { $surface }, section { $section }
place-gap = Gap reading { $number }, { $surface } { $joint }: { $field }
place-moisture = Moisture reading { $number }: { $field }
place-room = Room reading { $number }: { $field }
place-month = { $month ->
        [1] January
        [2] February
        [3] March
        [4] April
        [5] May
        [6] June
        [7] July
        [8] August
        [9] September
        [10] October
        [11] November
       *[12] December
    }: { $field }
place-stacked = Board reading { $number }: { $field }
place-visit = Visit on { $date }: { $field }
place-later-gap = Visit on { $date }, { $surface } { $joint }: { $field }

## The file

problem-left-out = { $reason ->
        [unknown-field] “{ $about }” is not known here
        [missing-field] “{ $about }” is missing
        [twice-field] “{ $about }” is given twice
        [unknown-choice] “{ $about }” is not one of the choices
        [list] A list was expected
        [text] Text in quotes was expected
        [true-or-false] true or false was expected
        [comma] A comma was expected
        [colon] A colon was expected
        [name] A name was expected
        [number] A number was expected
        [closing-bracket] A closing bracket was expected
        [opening-bracket] An opening bracket was expected
        [ends] The file ends too early
        [trailing] Something follows the end of the job
       *[other] { $about }
    }. “{ $text }” was left out.
    .fix = Enter it again, or fix the file and open it again.
problem-unknown-entry = “{ $name }” is not known to this program.
    .fix = It is kept as it is. A newer Gapwright may know it.

## Ranges

# $of is what the figure is of: an item by its number or its name, a line of the price, or the field itself.
problem-out-of-range = { $of ->
        [number] Number { $number }: { $value } is not between { $low } and { $high }.
        [name] “{ $name }”: { $value } is not between { $low } and { $high }.
        [labour] Labor: { $value } is not between { $low } and { $high }.
        [materials] Materials: { $value } is not between { $low } and { $high }.
        [equipment] Equipment: { $value } is not between { $low } and { $high }.
        [overhead] Overhead: { $value } is not between { $low } and { $high }.
        [contingency] Contingency: { $value } is not between { $low } and { $high }.
        [profit] Profit: { $value } is not between { $low } and { $high }.
        [minimum] Minimum charge: { $value } is not between { $low } and { $high }.
        [tax] Tax: { $value } is not between { $low } and { $high }.
        [rounding] Rounding: { $value } is not between { $low } and { $high }.
       *[field] { $value } is not between { $low } and { $high }.
    }
    .fix = { $mended ->
        [used] Correct it. Until then, { $used } is used.
       *[left-out] Correct it. Until then, it is not used.
    }
problem-too-many = There are { $count }, more than { $most }.
    .fix = Remove some. Until then, the first { $most } are used.

## The drawing

problem-no-boards = “{ $surface }” has no boards.
    .fix = Choose a pattern for it.
problem-same-surface = Two surfaces are called “{ $name }”.
    .fix = Rename one, so that readings know which they belong to.
problem-same-section = Two sections are called “{ $name }”.
    .fix = Rename one, so that readings know which they belong to.
problem-profile-too-wide = A profile of { $size } on each edge does not fit the board.
    .fix = Type the width of one bevel or of the bead, such as 1/8 in or 3 mm. Until then, { $used } is used.
problem-not-in-catalog = “{ $name }” is not in the catalog.
    .fix = { $listed ->
        [species] { $count ->
            [0] Choose a species from the list.
            [one] That’s a trade name. The species sold as that is { $sold }.
           *[other] That’s a trade name for several species: { $sold }. The grade stamp or the supplier says which.
        } Until then, these boards are not worked out.
        [place] Choose the nearest place from the list, or type twelve months. Until then, the room’s air is not known.
       *[other] Choose one from the list. Until then, the repair is not worked out.
    }

## Readings

problem-no-such-joint = There is no joint “{ $joint }” on “{ $surface }”.
    .fix = Pick the joint again on the drawing, or remove the reading. Until then, it is kept and not used.
problem-no-such-section = There is no section “{ $section }” on “{ $surface }”.
    .fix = Choose the section again. Until then, the reading counts only for sections without readings of their own.
problem-near-tongue = A gap of { $width } is about as wide as the tongue is long ({ $tongue }).
    .fix = Check whether the boards have come apart. Sealant alone won’t fix this joint.
problem-gaps-differ = { $joint } was measured as { $earlier } and as { $later }.
    .fix = Measure again and remove the wrong one. Until then, the average is used.
problem-moistures-differ = The same board was read as { $earlier } and as { $later }.
    .fix = Read again, with the pins along the grain. Until then, the average is used.
problem-no-reading = There is no figure yet.
    .fix = Type what the meter shows. Until then, the reading is not used.
problem-meter-unsure = A pin meter can’t be trusted at { $reading }, only from { $low } to { $high }.
    .fix = The reading is used as it is. Weigh and oven-dry a piece if it matters.
problem-meter-unlike-rest = Corrected for temperature, the meter readings here come to { $says }, but the room’s air and everything else put these boards between { $low } and { $high }.
    .fix = Check the meter’s species setting and the wood’s temperature, or measure in another spot. If water is getting in here, find out where first.
problem-open-between-fixed = Joint { $joint } reads { $width }, but its boards are entered as nailed at both edges, which would keep it closed.
    .fix = Check how the boards are nailed. Nailed at both edges, they don’t move and no joint between them opens.
problem-all-closed = All { $count } gaps read 0: no joint has opened.
    .fix = Measure the joints where you see a line. If none shows, there is nothing to repair.
problem-not-this-room = The hygrometer reads { $reading }, but the room as described would be between { $low } and { $high } at this time of year.
    .fix = Check the hygrometer in another room. If it’s right, correct the entries for the room: humidifier, winter air, or summer.
problem-dated-after-visit = { $date } is after the visit on { $visited }.
    .fix = Correct the date, or the visit date. Until then, the reading counts as taken at the visit.
problem-dated-before-install = { $date } is before the boards were installed, { $installed }.
    .fix = Correct the date, or the install date. Until then, the reading counts as taken at the visit.
problem-dated-long-before = The reading is from { $date }, { $days } days before the visit.
    .fix = It counts as taken at the visit. Measure again if you can.

## The air

problem-cools-below-heat = The summer thermostat at { $cool } is below the winter thermostat at { $heat }.
    .fix = Set the AC higher than the heat. Until then, the room stays at { $heat } all year.

## Dates

problem-installed-after-visit = { $installed } is after the visit on { $visited }.
    .fix = Correct one of the two. Until then, the install date is not used.
problem-built-after-visit = { $built } is after the visit on { $visited }.
    .fix = Type the year, or leave it empty. Until then, it is not used.
problem-seals-before-visit = { $date } is before the visit on { $visited }.
    .fix = Choose a later day, or leave it empty. Until then, the best weeks are used.
problem-seals-too-late = { $date } is after { $last }, the last day of the forecast.
    .fix = Choose an earlier day, or leave it empty. Until then, the best weeks are used.
problem-wanted-before-delivery = The boards are wanted on { $wanted }, before they come on { $delivered }.
    .fix = Correct the date, or leave it empty. Until then, it is not used.
problem-read-before-delivery = This reading is of { $date }, before the boards came on { $delivered }.
    .fix = Correct the date of the reading or of the delivery. Until then, the reading counts as the delivery’s.
problem-read-too-late = This reading is of { $date }, long after the boards came on { $delivered }.
    .fix = Correct the date of the reading or of the delivery. Until then, the reading is not used.

## The plan

problem-shares-over-whole = { $line ->
        [none] The contractor’s { $contractor } and the supplier’s { $supplier } add up to more than the whole price.
        [labour] Labor: the contractor’s { $contractor } and the supplier’s { $supplier } come to more than the whole.
        [materials] Materials: the contractor’s { $contractor } and the supplier’s { $supplier } come to more than the whole.
        [equipment] Equipment: the contractor’s { $contractor } and the supplier’s { $supplier } come to more than the whole.
        [overhead] Overhead: the contractor’s { $contractor } and the supplier’s { $supplier } come to more than the whole.
        [contingency] Contingency: the contractor’s { $contractor } and the supplier’s { $supplier } come to more than the whole.
        [profit] Profit: the contractor’s { $contractor } and the supplier’s { $supplier } come to more than the whole.
        [minimum] Minimum charge: the contractor’s { $contractor } and the supplier’s { $supplier } come to more than the whole.
        [tax] Tax: the contractor’s { $contractor } and the supplier’s { $supplier } come to more than the whole.
       *[rounding] Rounding: the contractor’s { $contractor } and the supplier’s { $supplier } come to more than the whole.
    }
    .fix = Lower one of the two. The homeowner pays the rest. Until then, the supplier’s share is { $used }.
problem-stock-too-short = The longest board is { $board }, and only { $good } of the longest stock of { $stock } is left after end trim.
    .fix = Add a longer stock length, or give the section a max length. Until then, options with new boards are not worked out.
problem-no-stock = There are no stock lengths to buy.
    .fix = Type the lengths boards are sold in. Until then, options with new boards are not worked out.
problem-minutes-out-of-order = Your minutes for “{ $task }” ({ $least }, { $likely }, { $most }) must be above 0 and go from low to high.
    .fix = Put them in order. Until then, the catalog’s are used.
problem-no-such-task = Your own minutes for “{ $task }” aren’t used: there is no such task any more, or its time goes with something else now.
    .fix = Type your minutes again under Tasks.
problem-wage-like-charge = A wage of { $wage } charges { $charged } an hour. Is { $wage } your hourly rate with everything in it?
    .fix = If it is, switch to one hourly rate.
problem-no-timed-minutes = The minutes are not typed yet.
    .fix = Type how long it took one person. Until then, the catalog’s rate is used.
problem-no-such-timed-section = There is no section “{ $section }” on “{ $surface }”.
    .fix = Choose the section that was timed. Until then, the catalog’s rate is used.

## The price book

problem-book-figure = “{ $entry }”: { $figure ->
        [stretch] stretch of { $value }
        [squeeze] squeeze of { $value }
        [solids] solids of { $value }
        [transfer] transfer efficiency of { $value }
        [cure] cure time of { $value }
        [recoat] recoat time of { $value }
        [film] dry film of { $value }
        [pack] a pack or can of { $value }
        [price] a price of { $value }
        [coverage] coverage of { $value } per piece
       *[batch] a batch of { $value }
    } is not between { $low } and { $high }.
    .fix = Correct it under Catalog. Until then, it is not used.
problem-book-no-pack = “{ $entry }” has no pack or can size.
    .fix = Add one. Until then, it is not used.
problem-book-minutes = “{ $entry }”: the minutes { $least }, { $likely }, { $most } must be above 0 and go from low to high.
    .fix = Put them in order. Until then, it is not used.
problem-book-no-task = “{ $entry }” has no task among its steps.
    .fix = Add the tasks it takes. Until then, it is not used.
problem-book-too-few-tasks = “{ $entry }” closes the joints in fewer than three tasks.
    .fix = Add the tasks it takes, from opening the joints to cleaning up. Until then, it is not used.
problem-unknown-step = “{ $method }” has a step “{ $step }”, which is not a task in the catalog.
    .fix = Remove the step, or add such a task. Until then, the step is skipped.
problem-former-rates = Rates kept with this job aren’t used any more, because these tasks are counted another way now: { $tasks }. The catalog’s rates are used.
    .fix = Look at the tasks under Price, and set your own minutes where you have them.
problem-old-prices = These prices were more than a year old on the day of the visit: { $names }.
    .fix = Get new prices and enter them under Catalog.

## What follows from the entries

problem-beyond-drying = An average gap of { $gap } is more than drying from green explains.
    .fix = Look for another cause: a leak, boards that got wet and crushed each other, boards stuck together in groups, framing that moved.
problem-sealed-off = The paint lets no moisture through and the backs are tight to drywall or plaster, so by these entries the boards never change.
    .fix = Check the paint and the backing. No paint is that tight.
problem-opens-past-tongue = In the driest weeks a typical joint opens to { $gap }, past the { $tongue } tongue.
    .fix = The boards come apart there: sealant alone can’t hold that.
problem-wetted = The boards are at { $moisture }, wetter than the { $wettest } this room can bring them to.
    .fix = Find where the water comes from first, and do the work once they are dry.
problem-pushes = In the humid season { $joints ->
        [one] 1 measured joint closes
       *[other] { $joints } measured joints close
    } and the boards push on each other, most at { $most }, where they would swell { $push } past closed.
    .fix = Expect tight joints there, perhaps crushed edges or popped nails, and leave them unsealed.

problem-climate-unreadable = The climate of “{ $place }” can’t be read: the program’s own table is damaged.
    .fix = Install the program again, or type twelve months. Until then, the room’s air is not known.
