### The papers: their names, and the headings, labels and sentences of their templates. Templates are
### handed every message here that has no arguments, by its id; the rest reaches them filled in.

paper-name = { $paper ->
    [letter] Homeowner’s letter
    [proposal] Proposal
    [crew-card] Crew card
    [measuring-sheet] Measuring sheet
    [price-sheet] Price sheet
    [work-order] Work order
    [buying-list] Buying list
    [evidence-sheet] Evidence sheet
    [follow-up-report] Follow-up report
    [owner-page] Homeowner’s page
    [calendar] Calendar
   *[follow-up-card] Follow-up card
}
paper-page = page { $page } of { $pages }
paper-logo = Logo
paper-date = date
paper-nothing-chosen = No repair option is selected yet.
paper-cautions = Safety notes
paper-source-memory = { $source }; from memory
paper-none = –

## Letter

paper-letter = Letter
paper-about = About your boards{ $named ->
    [yes] : { $title }
   *[no] {""}
}
paper-surface-drawing = Drawing of { $surface } with its open joints
paper-surface-caption = Open joints, drawn 10 times actual width. Dark: measured. Light: estimated.
paper-sections-drawing = Sections through a typical joint: as installed, today, and in each coming season
paper-sections-caption = Sections through a typical joint at actual size, room side up.
paper-sections-caption-sealed = Sections through a typical joint at actual size, room side up. From { $date } on, with the new bead.
paper-year-drawing = A typical joint and the boards’ moisture content over the coming year
paper-year-caption = A typical joint over the coming year if nothing is done.
paper-cost = What it costs
paper-we-cover = We cover, as a courtesy
paper-supplier-covers = Requested from the supplier
paper-option-against = not recommended
paper-payers-open = Who pays what is still to be agreed
paper-you-pay = You pay
paper-total = Total
paper-deposit = { $amount } is due before work starts.
paper-options = Options considered
paper-option-price = price
paper-option-days = days
paper-option-look = finished look
paper-option-reopening = chance of reopening
paper-promise = Our warranty, and what we ask of you
paper-warranty = We warrant this work for { $years ->
    [one] 1 year
   *[other] { $years } years
}{ $proposal ->
    [later] . The terms will be in our proposal, once we have agreed on who pays what.
   *[there] , on the terms in our proposal.
}
paper-before-work = Before work starts
paper-letter-close = Call us with any questions.
paper-sign-contractor = For the contractor
paper-sign-owner = Homeowner

## Price sheet

paper-initials = I have read this and want the repair anyway. Homeowner’s initials:
paper-draft-errors = { $count ->
    [one] DRAFT, do not hand over: an entry can’t be used ({ $places }).
   *[other] DRAFT, do not hand over: { $count } entries can’t be used ({ $places }).
}
paper-draft-incomplete = DRAFT, do not hand over: there isn’t enough to go on yet.
paper-draft-nothing-measured = DRAFT, do not hand over: no gap has been measured yet.
paper-draft-no-boards = DRAFT, do not hand over: no boards are drawn.
paper-draft-payers-open = DRAFT, do not hand over: who pays is still to be agreed.
paper-draft-finished = DRAFT, do not hand over: the work was finished on { $on }.
paper-draft-measured-again = DRAFT, do not hand over: joints were measured again on { $on }.
paper-held-incomplete = There isn’t enough to go on yet.
paper-held-nothing-measured = No gap has been measured yet.
paper-held-no-boards = No boards are drawn.
paper-held-payers-open = The boards likely went up too wet, so whoever supplied or installed them may owe part of this. Say who pays under Price.
paper-held-finished = The work was finished on { $on }, so there is nothing left to offer. The follow-up report tells what came of it.
paper-held-measured-again = Joints were measured again on { $on }, so this offer would count from an older visit. To offer the repair anew, save a copy of the job, make that day its visit, and enter those gaps under Measure.
paper-held = Not written: { $papers }.
paper-held-drafts = Fix that, or write them as drafts: each page then says so.
paper-not-priced = Nothing can be priced yet.
paper-missing = Next:
paper-price-range = 80% range: { $low } to { $high }
paper-price = Price
paper-contractor-pays = We cover
paper-supplier-pays = Requested from the supplier
paper-owner-pays = Homeowner pays
paper-margin = Profit is { $margin } of the price before tax.
paper-cost-spread = Job cost range
paper-cost-chances = In { $trials } simulated jobs, labor and materials before overhead stayed under { $half } half the time, under { $eight } in 8 of 10, and under { $nine } in 9 of 10.
paper-cost-drivers = What moves the cost most, from best to worst case:
paper-labor = Labor: { $hours } hours, crew of { $crew }, { $days ->
    [one] 1 day
   *[other] { $days } days
} of work, room closed { $closed ->
    [one] 1 day
   *[other] { $closed } days
}
paper-task = task
paper-batches = batches
paper-minutes-each = min each
paper-hours = hours
paper-rate-from = source of rate
paper-batch-note = { $units ->
    [inches] A batch is 100 ft of joints, 100 sq ft of surface, 10 ft of trim, one section, or one visit, depending on the task.
   *[millimeters] A batch is 30.5 m of joints, 9.3 m² of surface, 3 m of trim, one section, or one visit, depending on the task.
} Minutes are for one person, the average of best, likely, and worst case.
paper-materials = Materials
paper-item = item
paper-needed = needed
paper-buy = buy
paper-each = each
paper-amount = amount
paper-with-line-above = with line above
paper-cutting-list = Cutting list
paper-boards = boards
paper-board-length = length
paper-cut-into = cut into
paper-offcut = left over
paper-cut = { $count } × { $length }
paper-internal = Internal: shows wages, overhead, and profit. Not for the homeowner.
paper-internal-mark = INTERNAL, not for the homeowner
paper-check-first = Check first
paper-days = Schedule
paper-day = day { $day }
paper-days-note = Filled: the crew is working. Outlined: waiting for something to dry or cure.

## Work order

paper-crew = Crew of { $crew }, { $days ->
    [one] 1 day
   *[other] { $days } days
} of work, room closed { $closed ->
    [one] 1 day
   *[other] { $closed } days
}
paper-surface-map = Map of { $surface }
paper-where = Sections, in this order
paper-section = section
paper-joints = joints
paper-run = length
paper-typical-gap = typical gap
paper-bead-depth = bead thickness
paper-sealant = sealant
paper-boards-at = moisture
paper-hours-note = Start at { $starts }. Lunch { $lunch }, not paid. The hours of each hold the drive, setup, and cleanup.
paper-hours-note-no-lunch = Start at { $starts }. The hours of each hold the drive, setup, and cleanup.
paper-hand-back = The owner uses the room in the evening: before you leave, roll up the film, uncover the floor, and sweep.
paper-from-to = { $from } to { $to }
paper-place = { $surface }, { $section }
paper-place-wet = { $surface }, { $section } (wet: let it dry first)
paper-where-note = Gaps and board moisture as expected in the week of { $date }.
paper-where-note-boards = Gaps and board moisture as expected on { $date }. If the meter reads more than 2% above the table, stop and call: there may be a leak.
paper-office = Office
paper-wood-is = Wood
paper-work-how = How
paper-unwanted = We advised against this repair. The owner asked for it anyway: don’t start before the warning on the proposal is initialed.
paper-how-step =
    { $step ->
        [line-cut] Run a straightedge and a scraper or oscillating saw along each joint until the line is even from end to end. Cut no wider than that joint’s widest spot.
        [line-edges] Ease both edges lightly with 150-grit so paint holds on them. Vacuum the joint out.
        [line-paint] Spot-prime bare wood. Paint the tongue and both edges with a small brush, two thin coats in the wall color, and wipe off what bridges the line.
        [new-paint] Prime and paint the new boards on all sides before they go up, tongues and cut ends too.
        [new-hang] Start straight and plumb. Hang them tight to each other, blind-nailed through the tongue only, so that each board can move.
        [new-last] Rip the last board of a section to fit, with a little room behind the trim.
        [relay-number] Number the boards on the back as they come down, and keep each section together. Pull the nails and clean off the old caulk.
        [relay-hang] Lay them up again in order, tight to each other, blind-nailed through the tongue only, so that each board can move.
        [relay-fill] Rip the filler board to the width that is left over at the end of the section.
        [strip-nail] Nail each strip through one board only, along one edge, so that both boards can still move. Set it centered over the joint.
       *[strip-paint] Paint the strips on all sides before they go up. Don’t caulk them to the boards.
    }
paper-bead = Bead
paper-bead-shape =
    Drawn 4 times actual size. Gap { $gap }. { $lay ->
        [bridge] Lay the bead across the joint, { $depth } thick, so it sticks to both boards. Don’t pack the slot behind it.
        [reveal] Lay tape on the tongue, then a bead { $depth } thick that sticks to both boards only.
       *[on_tongue] Push the bead down to the tongue: { $depth } in all.
    }
paper-bead-first = The ring marks where it would let go first.
paper-bead-backed = The slot behind the bead stays empty, except where the gap is { $least } or more: push in backer there, so the bead doesn’t sink.
paper-bead-v = Fill { $share } of the V.
paper-bead-limits = Rated to stretch { $stretch } and compress { $squeeze }. Don’t paint it for { $cure }.
paper-narrow-joints = { $count ->
    [one] 1 more joint is
   *[other] { $count } more joints are
} narrower than { $narrowest } on that day: scrape and paint { $count ->
    [one] it, don’t caulk it.
   *[other] them, don’t caulk them.
}
paper-steps = Day by day
paper-plan-when = when
paper-plan-what = what
paper-plan-hours = hours each
paper-plan-taken = hours taken
paper-step-start = Day { $day }, { $time }
paper-step-end = to { $time }
paper-step-end-later = to day { $day }, { $time }
paper-do-not = Do not
paper-do-not-seal = { $units ->
    [inches] Don’t seal on damp or dusty edges, below 40°F, or above 95°F, unless the cartridge says otherwise.
   *[millimeters] Don’t seal on damp or dusty edges, below 5°C, or above 35°C, unless the cartridge says otherwise.
}
paper-do-not-seal-wet = Don’t seal while boards read more than { $most }.
paper-do-not-paint = Don’t paint until the sealant has cured and a fingertip leaves no mark.

paper-do-not-hang-wet = Don’t hang the new boards until 8 of them average { $most } or less on the meter.
paper-do-not-fill = Don’t caulk the joints: they stay as this repair leaves them.

paper-map-every = Joints are numbered in steps of { $step }, and at the ends. Count from the nearest number.
paper-map-seal = Red: seal this joint. Dashed: narrower than { $narrowest } on that day, leave it or open it up first. Gray: leave as is.
paper-map-work = Red: work on this joint. Gray: leave as is.
paper-map-boards = Red: the boards here come down. Gray: painted only.
paper-map-open = Red: open joints.
paper-map-evidence = Red: measured, with its number.
paper-map-photos = Blue dots: photos.
paper-map-reading = Blue: read these first.
paper-seal-today = Seal today only if
paper-seal-today-gaps = the joints are between { $low } and { $high }
paper-seal-today-gaps-section = { $surface }, { $section }: the joints are between { $low } and { $high }
paper-seal-today-wet = the boards that got wet have dried that far, and the leak is fixed
paper-seal-today-boards = the boards read { $most } or less
paper-seal-today-edges = { $units ->
    [inches] the edges are clean and dry, and the room is between 40°F and 95°F
   *[millimeters] the edges are clean and dry, and the room is between 5°C and 35°C
}
paper-seal-today-room = the room is near the humidity we expect, { $low } to { $high }
paper-seal-today-else = If not, stop and call: the timing is off, or there’s a leak.
paper-products = Products
paper-product-sealant = Sealant
paper-product-primer = Primer
paper-product-paint = Paint
paper-product-use = use
paper-product = product
paper-product-class = class, at least
paper-product-color = color
paper-product-brand = brand and batch used
paper-product-solids = { $solids } solids
paper-phone = Homeowner’s phone
paper-getting-in = Getting in
paper-crew-on-site = on site
paper-crew-people = people
paper-hours-and-pieces = Hours and pieces taken
paper-hours-and-pieces-note = Hours are of everyone together, as planned. Fill in what it took: that sets the rates of the next job.
paper-hours-and-pieces-timed = Section { $section }, the one you timed, is already scraped; the rest of its work is still to do. The hours of that scraping are in this table, but not in the days.
paper-hours-plan = hours
paper-taken = taken
paper-pieces-planned = pieces
paper-pieces-used = used
paper-joints-and-run = { $joints ->
    [one] 1 joint, { $run }
   *[other] { $joints } joints, { $run }
}
paper-boards-and-area = { $boards ->
    [one] 1 board, { $area }
   *[other] { $boards } boards, { $area }
}
paper-scope-what = what we work on
paper-map = Joint map

## Measuring sheet

paper-reading-first = { $count ->
    [one] Read this joint first: it tells the most.
   *[other] Read these { $count } joints first, in this order: each tells the most after those before it.
}
paper-reading-enough = The readings are close enough. Any more you take still help.
paper-reading-order = order
paper-reading-gap = gap
paper-reading-bead = bead (whole, one side, split, paint, squeezed out)
paper-reading-again = Read before
paper-reading-meter = Moisture meter
paper-reading-meter-name = meter and its species setting
paper-reading-board = which board
paper-reading-room = Room
paper-reading-time = time
paper-reading-by = read by
paper-reading-how = Gauge the gap between the edges, below any V, at the middle of the joint; 0 if it is closed. Run the pins along the grain.
paper-reading-wood = wood temp.
paper-reading-temperature = room temp.
paper-reading-humidity = humidity

## Buying list

paper-aisle = { $aisle ->
    [sealant] Sealant
    [paint] Paint and primer
    [lumber] Lumber and boards
    [supplies] Masking, tools, and supplies
   *[other] Other
}
paper-instead-sealant = any paintable sealant of { $class } or higher
paper-instead-paint-solids = same type, at least { $solids } solids
paper-instead-paint = same type, at least the same solids
paper-strip = { $name }, { $thick } × { $wide }
paper-color-is = Color: { $color }.
paper-color-blank = Color: ______________
paper-lumber-strip = { $species }, in the longest lengths you have; the longest joint is { $longest }.
paper-lumber-board = { $species }, { $tongued ->
    [yes] tongue-and-groove,{" "}
   *[no] {""}
}{ $profile }{ $sized ->
    [yes] {" "}{ $size }
   *[no] {""}
}, { $thickness } × { $width } ({ $face } face){ $length ->
    [told] .
   *[longest] , up to { $longest } long.
}
paper-lumber-dry = { $count ->
    [all] They must average { $most } or less on the meter.
   *[eight] 8 of them must average { $most } or less on the meter.
}
paper-needed-by = Needed by
paper-or-use = or use
paper-about-price = about
paper-buying-note = Whole pieces, waste included. Prices are those in this job. Any brand that meets the class will do.

## Evidence sheet

paper-from-readings = Findings
paper-surface = surface
paper-mean-gap = average gap (estimate)
paper-measured = measured
paper-boards-now = boards now (best estimate)
paper-at-install = at install (90% range)
paper-room-mean = room average
paper-plus-minus = { $mean } ± { $error }
paper-measured-of = { $measured } of { $joints }
paper-moisture-readings = { $readings ->
    [0] { $moisture } (no readings here)
    [one] { $moisture } (1 reading)
   *[other] { $moisture } ({ $readings } readings)
}
paper-moisture-range = { $moisture } ({ $low }–{ $high })
paper-stamps = Grade stamps: how sure it is that the boards were wetter
paper-stamp = stamp
paper-stamp-most = allows up to
paper-stamp-chance = chance that the boards were above it at install
paper-photos = Photos
paper-photo-number = no.
paper-photo-place = { $x } right, { $y } up
paper-photo-at = place
paper-photo-shows = shows
paper-photo-file = file
paper-photo-column = photo
paper-photo-joint = Joint { $joint }: { $gap } on { $date }
paper-photo-alt = Photo { $number }, { $surface }
# Where the job's photos lie is a folder beside the job.
paper-photo-fault-name = “{ $file }” isn’t the name of a photo. Remove it from the drawing and pin the photo again.
paper-photo-fault-unreadable = { $cause ->
    [missing] “{ $file }” isn’t in the job’s photo folder. Put it back there, or pin the photo again.
    [denied] You don’t have permission to read “{ $file }”. Change its permissions, or pin the photo again.
   *[other] “{ $file }” can’t be read. The system says: { $system }. Pin the photo again.
}
paper-photo-fault-large = “{ $file }” is { $megabytes } MB; the limit for a photo is { $limit } MB. Pin a smaller copy.
paper-photo-fault-pixels = “{ $file }” has too many pixels to print. Pin a smaller copy.
paper-photo-fault-kind = “{ $file }” is damaged, or not a JPEG or PNG. Pin another copy of the photo.
paper-photo-fault-full = “{ $file }” isn’t shown: the photos before it fill the sheet. Unpin some, or send it along.
paper-photo-note = Photos are printed without the place, time, and device that a camera keeps in its files. The originals stay with the job.
paper-meter-setting = set to
paper-evidence-fair = This sheet says how wet the boards were and how sure that is. It blames no one: a chance below about 9 in 10 settles nothing.
paper-causes = Odds of each cause
paper-causes-note = Causes can come together, so the odds don’t add up to 100%.
paper-odds = with everything known
paper-odds-before = before any reading
paper-clues-note = Each clue is weighed by itself here, and against one other cause, so two clues can pull in opposite ways. The odds above weigh all of them together.
paper-clue = what we saw
paper-clue-for = points to
paper-clue-against = points away from
paper-clue-weight = { $cause }: about { $factor } times as likely with this clue
paper-clue-weight-over = { $cause }: over { $factor } times as likely with this clue
paper-clue-weight-against = { $cause }: about { $factor } times less likely with this clue
paper-clue-weight-against-over = { $cause }: over { $factor } times less likely with this clue
paper-next-reading = Most useful next reading:
paper-does-not-fit = What doesn’t fit, and what to check
paper-inputs = Entries
paper-unknown = not known
paper-input-days = { $days ->
    [one] 1 day of readings
   *[other] { $days } days of readings
}
paper-input-photos = { $photos ->
    [one] 1, pinned on the drawing in the job file
   *[other] { $photos }, pinned on the drawing in the job file
}
paper-input-presumed = No town named; figured for a house in { $place }
paper-input-boards = { $species }, { $face } face, { $thickness } thick, { $profile }; nailing: { $nailing }; backing: { $backing }; paint: { $paint }; grain { $grain }°
paper-gap-readings = Gap readings
paper-joint = joint
paper-gap = gap
paper-reading-date = date
paper-meter-readings = Moisture meter readings
paper-board = board
paper-meter = meter
paper-wood = wood
paper-meter-note = As read on the meter, and corrected for the wood’s temperature.
paper-meter-corrected = corrected
paper-meter-offset =
    { $side ->
        [low] Weighed together with the gaps and the room, this meter seems to read about { $off } too low, give or take { $doubt }. The best estimates allow for that.
       *[high] Weighed together with the gaps and the room, this meter seems to read about { $off } too high, give or take { $doubt }. The best estimates allow for that.
    }
paper-claimed = Requested from the supplier
paper-room = Room on the day of the visit
paper-room-reading = { $temperature }, { $humidity } relative humidity
paper-method = Method
paper-method-shrinkage = Shrinkage: USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-190, 2010), eq. 13-2 and Table 13-5; outside 6–14% moisture content, from total shrinkage (Tables 4-3 and 4-4).
paper-method-moisture = Equilibrium moisture: Wood Handbook, eq. 4-5. Drying through the board’s thickness by finite volumes, in the room’s air over the year.
paper-method-install = Moisture at install: we work out thousands of plausible histories of the room and the boards, and each counts by how well it fits all readings. The range is right 9 times in 10.
paper-method-odds = Causes: from the same histories. In 200 simulated callbacks, causes rated 90% or higher were right 96 times out of 100.
paper-method-marks = Grade stamps: American Softwood Lumber Standard PS 20 and grading rules, where this sheet names them.
paper-not-fault = This is an estimate from a few readings. It does not say who is at fault; contracts, delivery papers, and local law decide that.
paper-sign-measured = Measured by
paper-sign-witnessed = Witnessed by

## Follow-up card

paper-no-gaps-yet = Measure some gaps first: they are the ones to come back to.
paper-look-again = Measure the same joints again, in the same spots. Best times: the humid season, around { $humid }, and the dry season, around { $dry }.
paper-look-again-done = The work was finished on { $finished }. { $at ->
    [bead] Check the same joints for an opening beside the bead.
    [strip] Look for strips that have come loose or split.
   *[joint] Check the same joints.
} Best times: the humid season, around { $humid }, and the dry season, around { $dry }.
paper-follow-joints = Joints
paper-at-visit = at the visit
paper-forecast-humid = forecast, humid
paper-forecast-dry = forecast, dry
paper-humid = humid
paper-dry = dry
paper-forecast-note = The forecast is for unsealed gaps between boards. Sealed joints should show no gap.
paper-forecast-note-work = The forecast is for the joints as they are now. Once the work is done, it no longer applies.
paper-forecast-note-open = The forecast is for the gaps between the boards.
paper-room-and-boards = Room and boards
paper-humid-season = humid season
paper-dry-season = dry season
paper-row-date = Date
paper-row-temperature = Temperature
paper-row-humidity = Relative humidity
paper-row-moisture = Moisture of two boards per section
paper-how = How to measure
paper-how-gap = Use a feeler gauge at the middle of the joint, below any V. Write 0 for a closed joint.
paper-how-meter = Set the pin meter to the species and read two boards per section. Note the wood’s temperature.
paper-how-room = Leave the hygrometer in the room for an hour before you read it.
paper-how-damp = Call us right away if a spot looks or feels damp.

## Follow-up report

paper-no-later-visit = No joint has been measured again yet. Add a visit under Follow-up.
paper-told = What we said
paper-later-visit = What came: visit on { $on }
paper-first-visit = first visit
paper-map-first-visit = Red: measured at the first visit, with its number.
paper-told-range = we said
paper-told-chance = chance something shows
paper-told-between = { $low } to { $high }
paper-came = measured
paper-came-opening = opening

## What can go wrong

paper-fault-no-folder = There is no folder “{ $path }” to take templates from. Choose a folder that exists, or write the built-in templates to it first.
paper-fault-template = { $file }, line { $line }: { $reason }. Fix the template, or go back to the built-in one.
paper-fault-template-no-line = { $file }: { $reason }. Fix the template, or go back to the built-in one.
paper-fault-no-page = { $file } doesn’t make a page. Fix the template, or go back to the built-in one.
paper-fault-template-size = { $file } is { $size } kB; the limit for a template is { $most } kB. Shorten it, or go back to the built-in one.
paper-fault-pdf = The PDF can’t be made: { $reason }
paper-fault-built-in-used = { $paper }: the built-in template was used. { $fault }
