### The next install: what to hang boards at, the gate at delivery, the watch over the stack.

next-headline =
    { $verdict ->
        [measure] Meter the boards before you hang them
        [hang] Hang them: they’re ready
        [wait] Wait: they’re not ready yet
        [change_plan] Change the plan: such boards won’t hold in this room
       *[send_back] Send them back: they won’t be ready in this room
    }
next-verdict =
    { $verdict ->
        [measure] Meter first
        [hang] Hang
        [wait] Wait
        [change_plan] Change the plan
       *[send_back] Send back
    }

## The window

next-window = Hang them at { $low } to { $high } average moisture. Aim for { $best } and leave { $gap } at each joint.
next-window-gaps = Drier boards need more room to swell: leave { $low_gap } at { $low }, and { $high_gap } at { $high }.
next-window-none = No moisture reaches { $asked } for these boards in this room. Best is { $best } with { $gap } at each joint: { $chance }.
next-window-best = At { $best } the chance is { $chance } that all joints hold.
next-rule = No joint may open past { $rule } in three years, and the boards must not buckle.

next-caulk-no = Don’t caulk these joints: they move about { $moves } over the years, and { $sealant } needs a joint at least { $needs } wide for that. Leave the V open as a shadow line.
next-caulk-yes = Caulk can follow these joints: they move about { $moves } over the years, and { $sealant } needs { $needs }.
next-caulk-hides = Open joints reach { $chance } at best, because the gap you leave counts as part of the opening.
next-finished-before = Painted before they go up, tongues and edges too, boards show no bare wood when a joint opens, and the paint can’t glue them together.
next-finished-after = Paint that goes on after the install bridges the joints. It can glue boards into groups, so that one joint takes the movement of several. Paint edges and tongues first if you can.

next-easier =
    { $change ->
        [width] Boards with a face of { $width } or less: { $chance }
        [finish] Back-primed boards: { $chance }
        [finish_oil] Oil paint on the face: { $chance }
       *[fixing] Nailed another way ({ $name }): { $chance }
    }
next-easier-none = None of the changes we tried helps much.

## The gate

next-now = Hung today, the chance is { $holds } that all joints hold. You asked for { $asked }.
next-risks = The chance that a joint opens past { $rule } is { $opens }. The chance that the boards buckle is { $buckles }.
next-leave = Leave { $gap } at each joint of these boards.
next-waiting = Waiting brings the chance to { $chance } at best.
next-send-back = The chance that they won’t be ready is { $chance }.
next-lot = The boards average { $moisture }, give or take { $sd }. Single boards are about { $spread } wetter or drier than that.
next-offset = Most of that doubt is the meter’s own error, which all readings share. More boards won’t lower it; a second meter or an oven-dry sample will.
next-dry-shell = The core is likely wetter than the shell: about { $core } against { $shell }. Pins in only { $pins } read too dry. Drive them in { $deep }.
next-core = Shell about { $shell }, core about { $core }.
next-promise-kept = At most { $most } was promised. By these readings about { $wetter } of the boards are wetter.
next-promise-broken = At most { $most } was promised. By these readings about { $wetter } of the boards are wetter. The chance is { $broken } that more than 1 board in 20 is over.
next-sampling-first = Meter { $count } boards: from the top, middle and bottom of the stack, 20 in or more from an end. If a quarter of a load is too wet, { $count } boards miss it { $missed } of the time.
next-sampling =
    { $count ->
        [one] 1 board metered. If a quarter of a load is too wet, 1 board misses it { $missed } of the time.
       *[other] { $count } boards metered. If a quarter of a load is too wet, { $count } boards miss it { $missed } of the time.
    }
next-sampling-plan = To accept or reject a load by counting wet boards, meter { $boards } and accept it with at most { $may_fail } wet. Then a good load (1 wet board in 20) is rejected { $turned_away } of the time, and a bad one (1 in 4) is accepted { $let_in } of the time.

## The watch

next-ready = The stack is likely ready about { $likely }, { $early } at the earliest. To be as sure as you asked, wait until { $sure }.
next-ready-even = The odds are better than even today. To be as sure as you asked, wait until { $sure }.
next-not-ready = The way it lies now, the stack won’t be ready within { $days } days.
next-late = That’s later than the day you want to hang them.
next-lever =
    { $lever ->
        [stickers] On stickers
        [into_room] On stickers in the room
        [dehumidifier] With a dehumidifier
       *[heat] Room kept 9 °F (5 °C) warmer
    }
next-lever-ready =
    { $days ->
        [0] no sooner
        [one] sure on { $date }, 1 day sooner
       *[other] sure on { $date }, { $days } days sooner
    }
next-lever-first = sure on { $date }
next-lever-never = not within { $days } days
next-reading = Meter again on { $date }.
next-known = Published figures back up the pace of wrapped boards and solid piles (Wood Handbook, chapter 13). For boards on stickers in a room we found none below 20% moisture. Those days are worked out from how fast moisture moves through wood and leaves a room. The meter decides, not the calendar.
next-outdoors-unknown = The outdoor air isn’t known here, so we can’t say how boards dry in a garage. Enter the place, or move the stack into the room.
next-incomplete = Enter a species and a place to see what moisture these boards need.

## In the window

next-room = Room
next-room-air = Place, heating and readings
next-boards = Boards
next-gate = Gate
next-watch = Watch
next-record = Record
next-begin = Check the boards before they go up. This tells you how wet they may be in this room, whether a delivery is, and when a stack will be ready.
next-begin-here = Plan an install
next-begin-new = Plan the next install in this room
    .hint = Makes a new job with the same room and boards. You’ll be asked to save this one first.
next-column-number = #
next-column-board = Board
next-column-reading = Reading, %
next-column-pins = Pins
next-column-date = Date
next-reading-board = Board of reading { $number }
next-reading-reading = Reading of board { $number }
next-reading-wood = Wood temperature of board { $number }
next-reading-pins = Pin depth of board { $number }
next-reading-date = Date of board reading { $number }
next-reading-remove = Remove board reading { $number }
next-reading-fresh = Reading of the next board
next-reading-add = Add a board reading
next-undo-remove = Remove a board reading
next-same = Same temperature and pins for all
    .hint = Copies wood temperature and pin depth from the first board to all boards of that day
next-today = Start today’s readings
next-picture = Average moisture of the stack from { $from } to about { $to } on { $date }. The band holds it 9 times in 10; the shaded strip is the range to hang at; the dashed lines are core and shell.
next-write = Write the record…
    .hint = Writes the delivery record and a one-page crew card as PDF, the figures as JSON, and a calendar entry for the next reading.
next-follow-up = Start the follow-up job

next-piling =
    { $piling ->
        [stickered] on stickers
        [solid] board on board
       *[wrapped] in its wrapper
    }
next-kept =
    { $kept ->
        [room] the room
       *[garage] a garage or shed
    }
next-joints =
    { $joints ->
        [open] open, as shadow lines
       *[sealed] caulked
    }
next-finish-order =
    { $order ->
        [before] before they go up
       *[after] after they go up
    }

## On paper

next-paper-record = Delivery record
next-paper-card = Delivery card for the crew
next-paper-delivery = Delivery
next-paper-readings = Readings
next-paper-verdict = Verdict
next-paper-supplier = Supplier
next-paper-delivered = Delivered
next-paper-promised = Promised at most
next-paper-boards = Boards
next-paper-boards-value = { $count } of { $species }, { $width } face, { $thickness } thick
next-paper-meter = Meter set to
next-paper-stack = Stack
next-paper-stack-value = { $piling }, in { $kept }
next-paper-measured-by = Measured by
next-paper-reading = Reading
next-paper-wood = Wood
next-paper-blanks = Readings: board and moisture
next-paper-sign-measured = Measured by
next-paper-sign-received = Received by
next-card-stickers = Put the boards on stickers in the room as soon as they come, one above the other, 16 in apart.
next-card-where = Meter boards from the top, middle and bottom of the stack, 20 in or more from an end.
next-card-pins = Drive the pins along the grain, a quarter of the thickness deep. Set the meter to the species. Note how warm the wood is.
next-card-type = Type the readings in before you hang a board.
next-card-hang = Leave the gap above at every joint. Don’t hang boards that read outside the range.
next-calendar = Meter the boards: { $title }

pick-record = Write the record
    .field = Folder for the record
    .button = Write

why-next-install = Before the next install
