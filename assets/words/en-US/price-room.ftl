### The Price room: days, crew, money, tasks, materials.

price-tax-remark = Sales tax rules differ from state to state. Check with your bookkeeper.

price-heading = { $option }: { $total }
price-days-heading = Days: { $crew } on site, { $calendar } from first to last
price-crew-heading = Room and crew
price-tasks-heading = Tasks: { $hours }
price-materials-heading = Materials
price-materials-not-bought = not bought
price-spread-heading = Job cost range
price-payers-heading = Who pays
price-rates-heading = Pricing
price-unused-rates-heading = Unused rates

## The build-up

price-total = Total
price-total-range = 80% range: { $low } to { $high }
price-deposit = Deposit
price-deposit-share = { $share } of the total, before work starts
price-profit-inside = Profit on labor is inside your hourly rate; the markup above is only on what you buy and on equipment.
price-none-heading = No price
price-made-of = { $basis }: { $amount }
price-made-of-source = Rates and packs can be changed under Tasks, Materials, and Pricing.
price-made-of-hours = { $hours } hr × { $rate } = { $amount }
price-made-of-packs = { $pieces } × { $price } = { $amount }
price-assumes-access =
    { $access ->
        [ladder] Assumed: work from a ladder, because of a slope or a high wall. Set Access if you use something else.
        [scaffold] Assumed: work from a scaffold, because a wall is higher than a ladder is good for. Set Access if you use something else.
       *[steps] Assumed: work from a step stool. Set Access if the room is higher.
    }
price-assumes-joints = Not included: { $run } of joint at board ends, miters, and edges, where nothing was measured.
price-assumes-windows = Assumed: { $count } windows and doors to mask; none is drawn.
price-assumes-lead = Assumed: lead paint, with the work that takes, because the year built is not known. Enter it under Measure.
price-assumes-fixtures = Assumed: { $count } lights and vents to take down or mask.
price-painting =
    { $way ->
        [sprayed_quicker] Priced as sprayed and back-brushed, which takes fewer hours here than brush and roller.
        [brushed_quicker] Priced with brush and roller, which takes fewer hours here than masking for the sprayer.
        [joints_few] Priced with paint at the sealed joints only: few of them are sealed. Touched-up paint can show beside old paint. To paint it all, pick another way of painting.
        [joints] Priced with paint at the sealed joints only. Touched-up paint can show beside old paint.
        [sprayed] Priced as sprayed and back-brushed.
       *[brushed] Priced with brush and roller: no sprayer, no film on the walls.
    }
price-overtime = Some days run past { $day }; overtime pay is not in the price.
price-starts =
    { $why ->
        [lead] Starts { $date }: { $days } workdays of lead time after the visit, or the first workday after.
        [order] Starts { $date }: boards are ordered first, { $days } workdays after the visit, or the first workday after.
        [drying] Starts { $date }: wet boards dry first. Until the leak is found, that day is a guess.
        [other_season] Starts { $date }: the other end of the year, to measure again.
       *[season] Starts { $date }: the day planned for sealing.
    }
price-moved-by = What moves it most: { $drivers }.
price-margin = A markup of { $markup } on cost is a margin of { $margin } of the price before tax.

price-spread = Labor and materials should cost about { $mean }. In { $trials } simulated jobs the cost stayed under { $half } half the time, under { $eight } in 8 of 10, and under { $nine } in 9 of 10.
price-spread-common = Half of the spread in each task’s time comes from the crew and the room, and is the same for all tasks. Rates nobody has timed may all be off together by up to a quarter (assumption); time a section, type your own minutes, or learn rates from finished jobs to narrow that.
price-drivers = What drives the cost: how much it rises when each of these alone goes from a good day to a bad one, the 10th to the 90th percentile.

## Who pays

price-against = { $chance }: not recommended here. Better: { $best }
price-payers-open = The boards likely went up too wet, so whoever supplied or installed them may owe part of this. Until you say who pays, the letter and the homeowner’s page leave it open, and the proposal waits.
price-homeowner-pays = Homeowner pays
price-courtesy = The letter says that you cover { $amount } as a courtesy.
price-courtesy-result =
    { $result ->
        [loss] Then you collect { $collected } before tax for work that costs you { $cost } with overhead: you lose { $amount } on this job.
       *[gain] Then you collect { $collected } before tax for work that costs you { $cost } with overhead: { $amount } is left.
    }
price-split-column-line = line
price-split-column-contractor = contractor
price-split-column-supplier = supplier
price-split-share =
    { $payer ->
        [contractor] Contractor’s share: { price-line }
       *[supplier] Supplier’s share: { price-line }
    }
price-split-remove = Remove split: { price-line }
price-split-add = Split a line differently

## The days

price-no-schedule = Without a crew and working hours there is no schedule.
price-day = { $date }, { $from } to { $to }, { $people ->
    [one] 1 person
   *[other] { $people } people
}
price-day-standby = { $does }; { $standby } of that is drying time
price-day-coat =
    { $coat ->
        [1] first coat
        [2] second coat
        [3] third coat
       *[other] coat { $coat }
    }
price-days-total = { $hours } paid, drive, setup, and cleanup included: { $people } person-days. Of all the plans we tried, this one costs least; one more trip has to save more than an hour of work.
price-days-legend = Filled: the crew works. Outlined: something dries or cures.
price-room-out =
    { $days ->
        [0] The room stays in use.
        [one] The room can’t be used for 1 day.
       *[other] The room can’t be used for { $days } days.
    }
price-bar-coats =
    { $coats ->
        [0] No paint
        [one] Paint, 1 coat
       *[other] Paint, { $coats } coats
    }
# Only on waits of several days.
price-bar-wait = { $days } days
price-bar-days =
    { $span ->
        [one_day] Day { $from }
       *[days] Day { $from } to day { $to }
    }
price-bar-days-waiting =
    { $span ->
        [one_day] Waiting on day { $from }
       *[days] Waiting from day { $from } to day { $to }
    }

## The tasks

price-tasks-column-task = task
price-tasks-column-batches = how much
price-tasks-column-minutes = min each
    .hint = Minutes for one person, on average. Type 35, 35 min, or 0.6 h.
price-tasks-column-hours = hours
price-task-minutes = Minutes: { $task }
price-tasks-remark = Hover over a task to see what a batch is and where its rate comes from. Empty a field to use the catalog’s rate.
price-task-batch =
    { $per ->
        [visit] A batch is one visit.
        [section] { $sections ->
            [one] A batch is one section.
           *[other] A batch is { $sections } sections.
        }
        [joint_run] A batch is { $run } of joint.
        [bead_run] A batch is { $run } of joint.
        [backed_run] A batch is { $run } of joint wide enough for backer.
        [painted_area] A batch is { $area } to paint.
        [coated_area] A batch is one coat on { $area }.
        [coated_grooves] A batch is one coat on { $run } of groove.
        [angled_end] A batch is one board end cut at an angle.
        [boarded_area] A batch is { $area } of boards.
        [board] A batch is one board.
        [opening] A batch is one window, door, or other opening in the boards.
        [window] A batch is one window or door.
        [fixture] A batch is one light or vent.
        [coat] A batch is one coat.
        [day] A batch is one day on site.
        [person_day] A batch is one person for one day on site.
        [evening] A batch is one evening.
        [standby] A batch is one hour.
        [trim_run] A batch is { $run } of trim.
        [board_run] A batch is { $run } of board.
       *[outline_run] A batch is { $run } of free edge around the surfaces.
    }
price-task-done = { $task }: { $section }, timed and done
price-task-and-besides = { $quantity } + { $minutes } min
# What there is of a task: 7.5 × 100 ft of joint; or a number of things: 88 boards.
price-task-quantity = { $batches } × { $amount } { $unit }
price-task-count = { $count } { $unit }
price-task-fixed = Plus { $minutes } min, whatever the amount.
price-task-also = Plus { $rate }, { $batches } times: { $total } min.
price-timed-none = none
price-timed-work = { $task }: the timed section took { $taken } and is done. { $charged ->
        [yes] You charge for it.
       *[no] It isn’t in the price.
    } Still to come: { $all }, 80% range { $low } to { $high }.

## The materials

price-materials-column-what = material
price-materials-column-needed = needed
price-materials-column-on-hand = on hand
    .hint = In the van or left over from another job. You don’t buy them, but they are used up, so the customer pays for them.
price-materials-column-buy = buy
price-materials-column-each = each
price-materials-column-amount = amount
price-own-price = Price: { $material }
price-on-hand = On hand: { $material }
price-materials-remark = Empty a price to use the catalog’s.
price-cutting = Cutting list
price-cutting-column-boards = boards
price-cutting-column-stock = length
price-cutting-column-pieces = cut into
price-cutting-column-offcut = left over
price-cutting-piece = { $count } × { $length }
price-cutting-waste = { $waste } of the length you buy ends up as waste: end trim, kerfs, defects, and offcuts. No cutting list can be more than { $cheaper } cheaper.
