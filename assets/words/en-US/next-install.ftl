### The next install: what to hang boards at, the gate at delivery, the watch over the stack.

next-headline-measure = Meter the boards before you hang them
next-headline-meter-more = Meter more boards before you decide
next-headline-check-meter = Check the meter before you hang them: these readings don’t fit the earlier ones
next-headline-hang =
    { $against ->
        [short] { $kind ->
            [tight] Hang them, tight: { $chance } is about as good as this plan gets
           *[gap] Hang them and leave { $gap } at each joint: { $chance } is about as good as this plan gets
        }
        [near] { $kind ->
            [tight] Hang them, tight: { $chance } is close to the { $asked } you asked for
           *[gap] Hang them and leave { $gap } at each joint: { $chance } is close to the { $asked } you asked for
        }
       *[told] { $kind ->
            [tight] Hang them, tight: they’re ready
           *[gap] Hang them and leave { $gap } at each joint: they’re ready
        }
    }
next-headline-wait =
    { $now ->
        [dry] Wait until { $date }: they’re too dry now
       *[wet] Wait until { $date }: they’re too wet now
    }
next-headline-first =
    { $lever ->
        [stickers] Put them on stickers now: they’re ready { $date }
        [into_room] Put them on stickers in the room now: they’re ready { $date }
        [dehumidifier] Run a dehumidifier by the stack: they’re ready { $date }
       *[heat] { $units ->
            [millimeters] Keep the stack’s room 5 °C warmer: they’re ready { $date }
           *[inches] Keep the stack’s room 9 °F warmer: they’re ready { $date }
        }
    }
next-headline-sort = Sort them: some are dry and some are wet
next-headline-promise = Send them back: they’re wetter than the { $most } promised
next-headline-send-back = Send them back: they won’t be ready in this room
next-headline-change-plan =
    { $joints ->
        [sealed] Change the plan: at best the chance is { $best } that no joint opens { $rule } more than you left it
       *[open] Change the plan: at best the chance is { $best } that all joints stay within { $rule }
    }
next-headline-caulk-fails = Change the plan: the caulk can’t follow these joints
next-verdict =
    { $verdict ->
        [measure] Meter first
        [meter_more] Meter more
        [hang] Hang
        [wait] Wait
        [sort] Sort
        [change_plan] Change the plan
       *[send_back] Send back
    }
next-chance-under = under { $chance }
next-chance-over = over { $chance }

## What boards for this room should be

next-window =
    { $kind ->
        [tight] Boards for this room should average { $low } to { $high } when they go up. Aim for { $best }, hung tight.
       *[gap] Boards for this room should average { $low } to { $high } when they go up. Aim for { $best }, with { $gap } at each joint.
    }
next-window-none =
    { $kind ->
        [tight] No moisture gets these boards to a { $asked } chance. The best is { $best } moisture, hung tight: the chance is { $chance }.
       *[gap] No moisture gets these boards to a { $asked } chance. The best is { $best } moisture, with { $gap } at each joint: the chance is { $chance }.
    }
next-rule =
    { $joints ->
        [sealed] For three years no joint may open more than { $rule } beyond the gap you left, and the boards must not buckle.
       *[open] No joint may be wider than { $rule } in three years, with the gap you leave counted in. And the boards must not buckle.
    }

next-caulk =
    { $can ->
        [yes] You can caulk these joints. Most move about { $usual } in all from dry season to damp, and 19 in 20 { $way ->
            [closes] close
           *[opens] open
        } less than { $moves }. { $kind ->
            [tight] Hung tight,
           *[gap] In a { $gap } joint,
        } { $sealant } can take { $takes } at its worst spot, by the shape of the bead.
       *[no] { $open ->
            [yes] Don’t caulk these joints: leave the V open as a shadow line.
           *[no] Don’t caulk these joints.
        } Most move about { $usual } in all from dry season to damp, but hung at about { $hung } moisture, 1 in 20 would { $way ->
            [closes] close
           *[opens] open
        } { $moves } or more. { $kind ->
            [tight] Hung tight,
           *[gap] In a { $gap } joint,
        } { $sealant } can take only { $takes } at its worst spot, by the shape of the bead.
    }
next-paint-first = Paint tongues and edges before the boards go up. Then no bare wood shows when a joint opens, and the paint can’t glue boards together.

next-easier =
    { $change ->
        [caulk] caulk the joints, which may then open { $length } beyond the gap you leave
        [open] leave the joints open, as shadow lines
        [gap] leave { $length } at each joint
        [rule] accept joints up to { $length } wide
        [rule_sealed] accept joints that open up to { $length }
        [width] buy boards with a { $length } face
        [finish] back-prime the boards
        [finish_oil] use oil paint on the face
        [humidifier] keep the room at { $kept } or more in winter, with a humidifier
        [summer] keep the room at { $kept } or less in summer, with AC or a dehumidifier
       *[fixing] nail them another way: { $name }
    }
next-way =
    { $then ->
        [today] { $change }: the chance is { $chance }, and you can hang them today
        [day] { $change }: the chance is { $chance }, ready { $date }
        [never] { $change }: the chance is { $chance }, but these boards aren’t ready for it in { $days } days
       *[unknown] { $change }: the chance is { $chance }, hung at about { $moisture } moisture
    }
next-easier-none = No single change we tried gets these boards there.
next-changes =
    { $kind ->
        [nearest] No single change we tried gets these boards there. Closest, each by itself: { $changes }.
       *[reaches] What would help, each by itself: { $changes }.
    }
next-changes-short =
    { $kind ->
        [nearest] No single change gets these boards there. Closest: { $change }.
       *[reaches] { $count ->
            [0] What would help: { $change }.
            [one] What would help: { $change }. 1 other way is listed below.
           *[other] What would help: { $change }. { $count } other ways are listed below.
        }
    }
next-ways =
    { $kind ->
        [nearest] Closest, each by itself
       *[reaches] What would help, each by itself
    }
next-way-try = Try it
    .hint = Changes the plan so. Undo takes it back.
next-way-try-named = Try it: { $way }
## The verdict and its reasons

next-now =
    { $kind ->
        [as_good] Hung today, the chance is { $holds } that all joints hold. You asked for { $asked }; we can’t tell those two apart.
        [short] Hung today, the chance is { $holds } that all joints hold. You asked for { $asked }; in this room these boards reach { $most } at best.
        [near] Hung today, the chance is { $holds } that all joints hold. You asked for { $asked }: if you can wait, it’s that by { $date }.
        [wait] Hung today, the chance is { $holds } that all joints hold. You asked for { $asked }; we’d hang them from { $from } up.
       *[told] Hung today, the chance is { $holds } that all joints hold. You asked for { $asked }.
    }
next-surprise = These readings average { $average }. From the earlier ones we’d expect { $low } to { $high }. Check the meter’s species setting, its pins, and whether these are the same boards, then meter again.
next-risk-opens =
    { $joints ->
        [sealed] Hung today, the chance that a joint opens { $rule } more than you left it is { $chance }.
       *[open] { $kind ->
            [told] Hung today, the chance that a joint opens past { $rule } is { $chance }.
            [tight] Hung tight today, the chance that a joint opens past { $rule } is { $chance }.
           *[gap] Hung today with { $gap } at each joint, the chance that a joint opens past { $rule } is { $chance }.
        }
    }{ $season ->
        [none] { "" }
       *[told] { " " }They’re widest around { $month }.
    }
next-risk-buckles =
    Hung today, the chance that the boards buckle is { $chance }.{ $season ->
        [none] { "" }
       *[told] { " " }They swell and push on each other most around { $month }.
    }
next-hang-now = Hang them within a few days.
next-hang-then =
    { $range ->
        [at_most] On { $date }, meter { $count } boards. Hang them if the readings, corrected for the wood’s temperature, average { $high } or less.
       *[between] On { $date }, meter { $count } boards. Hang them if the readings, corrected for the wood’s temperature, average { $low } to { $high }.
    }
next-hang-gap =
    { $kind ->
        [tight] Hang them tight.
       *[gap] Leave { $gap } at each joint.
    }
next-hang-gaps = At each joint leave { $steps }.
next-gap-step =
    { $place ->
        [under] { $kind ->
            [tight] no gap if they average under { $high }
           *[gap] { $gap } if they average under { $high }
        }
        [between] { $kind ->
            [tight] no gap from { $low } to { $high }
           *[gap] { $gap } from { $low } to { $high }
        }
       *[over] { $kind ->
            [tight] no gap if they average over { $low }
           *[gap] { $gap } over { $low }
        }
    }
next-hang-beside =
    { $range ->
        [at_most] If they average over { $high }, don’t hang them yet: call in the readings.
       *[between] If they average over { $high } or under { $low }, don’t hang them yet: call in the readings.
    }
next-hang-dry = They’re dry for this room: { $mean } now, and about { $settled } once they settle. They’ll swell, so don’t leave less than this gap.
next-too-dry = They’re too dry: { $mean } on average. Hung now, they’d swell and push on each other. On stickers in the room they take up what they lack.
next-mixed = That’s not one load: the boards average { $mean }, but single boards are about { $spread } wetter or drier than that.
next-sort = Meter every board. Hang the ones at { $high } or drier. Put the wetter ones on stickers, or send them back.
next-mixed-chance = Hung as they are, the chance is { $holds } that all joints hold. If the whole load waits, it’s { $waiting } at best.
next-never = The chance is { $not } that they won’t be ready. In { $days } days they reach { $best } at best.
next-if-kept = If you keep them as they are ({ $stack }), they’d be ready { $date }.
next-at-best = Hung today, the chance is { $holds } that all joints hold. With this plan it’s { $best } at best, and you asked for { $asked }.
next-so-few =
    { $count ->
        [one] 1 board says too little: a wet one may sit beside it. Meter { $more } more, from the top, middle and bottom of the stack.
       *[other] { $count } boards say too little: a wet one may sit beside them. Meter { $more } more, from the top, middle and bottom of the stack.
    }
next-read =
    { $kind ->
        [first] { $count ->
            [one] The board you metered reads { $average }, corrected for the wood’s temperature.
           *[other] The { $count } boards you metered average { $average }, corrected for the wood’s temperature.
        }
       *[later] { $count ->
            [one] The last board you metered reads { $average }, corrected for the wood’s temperature.
           *[other] The last { $count } boards you metered average { $average }, corrected for the wood’s temperature.
        }
    }
next-lot = Our best estimate for the whole load that day is { $moisture }, give or take { $sd }. Single boards are about { $spread } wetter or drier than that.
next-offset = Most of that doubt is the meter’s own error, which all readings share. More boards won’t lower it; a second meter or an oven-dry sample will.
next-dry-shell = The boards are likely wetter inside than near the face: about { $core } against { $shell }. Pins in only { $pins } read too dry. Drive them in { $deep }.
next-core = About { $shell } near the face, about { $core } in the middle.
next-promise-open =
    { $share ->
        [none] At most { $most } was promised. By these readings no board is wetter.
        [all] At most { $most } was promised. By these readings all boards are wetter.
       *[some] At most { $most } was promised. By our estimate { $wetter } of the boards are wetter. The chance is { $broken } that it’s more than 1 board in 20, and { $clearly } that it’s more than 1 in 4. { $likely ->
            [no] That doesn’t show the promise broken.
           *[yes] That is close to showing the promise broken: meter more boards.
        }
    }
next-promise-broken =
    { $share ->
        [all] At most { $most } was promised, and by these readings all boards are wetter.
       *[some] At most { $most } was promised. By our estimate { $wetter } of the boards are wetter. The chance is { $clearly } that it’s more than 1 board in 4.
    }
next-sampling-first = Meter { $count } boards: from the top, middle and bottom of the stack, { $end } or more from an end. If a quarter of the load is too wet, the chance is { $missed } that none of the { $count } shows it.
next-sampling =
    { $count ->
        [one] 1 board metered. If a quarter of the load is too wet, the chance is { $missed } that it doesn’t show.
       *[other] { $count } boards metered. If a quarter of the load is too wet, the chance is { $missed } that none of the { $count } shows it.
    }
next-sampling-plan = To agree on a load with the supplier by counting wet boards: meter { $boards }, and accept it with at most { $may_fail } wet. A good load (1 wet board in 20) is then turned away { $turned_away } of the time, and a bad one (1 in 4) gets in { $let_in } of the time.

## The stack

next-ready-sure =
    { $kind ->
        [as_good] By { $sure } the chance that all joints stay within the limit is { $chance }. You asked for { $asked }; we can’t tell those two apart.
        [short] By { $sure } the chance that all joints stay within the limit is { $chance }. You asked for { $asked }; in this room these boards reach { $most } at best.
        [near] By { $sure } the chance that all joints stay within the limit is { $chance }. You asked for { $asked }.
       *[told] By { $sure } the chance that all joints stay within the limit is { $chance }. You asked for { $asked }.
    }
next-ready-even = By { $even } the chance is 50%.
next-caulk-fails = The caulk in the plan can’t follow these joints.
next-wanted =
    { $can ->
        [yes] Can they go up on { $wanted }? Yes: the chance that all joints hold is { $chance }.
        [yes_first] Can they go up on { $wanted }? Yes, if you do that now: the chance that all joints hold is { $chance }.
        [close] Can they go up on { $wanted }? It’s close: the chance is { $chance }, and you asked for { $asked }. On { $date } it’s { $instead }.
        [no] Can they go up on { $wanted }? No: the chance is { $chance }. The first good day is { $date }: { $instead }.
        [never] Can they go up on { $wanted }? No: the chance is { $chance }, and no day in the next { $days } days is good enough.
        [sort] Can they go up on { $wanted }? Not the whole load: for all of it the chance is { $chance }.
        [caulk] Can they go up on { $wanted }? No: the caulk can’t follow these joints.
        [send_back] Can they go up on { $wanted }? No: these boards go back.
        [past] { $wanted }, the day you wanted them, is past. The next good day is { $date }: { $instead }.
        [past_none] { $wanted }, the day you wanted them, is past.
        [too_far] Can they go up on { $wanted }? That’s too far ahead to tell.
       *[measure] Can they go up on { $wanted }? Not enough to tell yet: meter { $more ->
            [one] 1 more board
           *[other] { $more } boards
        }.
    }
next-in-time = { $lever }: ready in time, on { $date }.
next-not-ready = As they’re piled now, they won’t be ready within { $days } days.
next-lever =
    { $lever ->
        [stickers] On stickers
        [into_room] On stickers in the room
        [dehumidifier] With a dehumidifier by the stack
       *[heat] { $units ->
            [millimeters] Room kept 5 °C warmer
           *[inches] Room kept 9 °F warmer
        }
    }
next-lever-ready =
    { $days ->
        [0] ready by { $date }, no sooner
        [one] ready by { $date }, 1 day sooner
       *[other] ready by { $date }, { $days } days sooner
    }
next-lever-first = ready by { $date }
next-lever-never = not within { $days } days
next-reading = Meter again on { $date } and call in the readings.
next-known = Published figures back up the pace of wrapped boards and solid piles (Wood Handbook, chapter 13). For boards on stickers in a room we found no published figures below 20% moisture. Those days are worked out from how fast moisture moves through wood and leaves a room. The meter decides, not the calendar.
next-outdoors-unknown = The outdoor air isn’t known here, so we can’t say how boards dry in a garage. Enter the place, or move the stack into the room.
next-incomplete = Enter the room, the boards, and 8 readings
next-missing = Enter { $what }
next-missing-part =
    { $part ->
        [boards] the boards’ species
        [room] the room’s town
       *[readings] { $count ->
            [one] 1 reading
           *[other] { $count } readings
        }
    }

## In the window

next-room = Room
next-room-place = Place
next-room-more = More about the room: elevation, readings, files
next-boards = Boards
next-boards-more = More about the boards: profile, nailing, paint, how sure
next-gate-more = More about the delivery
next-assumed-boards = We assume { $what }. A chance of { $chance } counts as sure enough.
next-planned = { $profile }; nailed: { $nailing }; behind: { $backing }; paint: { $paint }
next-assumed-delivery =
    { $promised ->
        [yes] The meter is set to { $setting }; at most { $most } was promised.
       *[no] The meter is set to { $setting }; no moisture was promised.
    }
next-gate = Delivery and meter readings
next-watch = Stack
next-record = Papers
next-begin = Check the boards before they go up. Enter the room, the boards and 8 readings, and this tells you whether to hang them, wait, or send them back.
next-begin-here = Plan an install
next-begin-new = Plan the next install in this room
    .hint = Makes a new job with the same room and boards. You’ll be asked to save this one first.
next-column-number = #
next-column-board = Board
next-column-reading = Reading, %
next-column-pins = Pin depth
next-column-date = Date
next-reading-board = Board of reading { $number }
next-reading-reading = Reading of board { $number }
next-reading-wood = Wood temperature of board { $number }
next-reading-pins = Pin depth of board { $number }
next-reading-date = Date of board reading { $number }
next-reading-remove = Remove board reading { $number }
next-reading-fresh = Reading of the next board
next-reading-fresh-date = Date of the next board’s reading
next-reading-add = Add a board reading
next-undo-remove = Remove a board reading
next-same = Copy board 1’s temperature and pin depth to all
    .hint = Copies wood temperature and pin depth from the first board to all boards of that day
next-today = Start today’s readings
    .hint = The readings you type from now on are of today
next-at-delivery = Taken at delivery
    .hint = The readings of the last day in the list, and those you type from now on, count as taken the day the boards came
next-picture = Average moisture of the stack from { $from } to about { $to } on { $date }. The blue band holds it 9 times in 10. The upright line is the day they’re ready, the green bar on it what the boards you meter that day may average. Dashes: in the middle of the board, and near its face.
next-picture-strip = hang in here
next-picture-ready = ready { $date }
next-picture-dashes = dashes: middle of the board and near its face
next-write = Write the record…
    .hint = Writes the delivery record and a one-page crew card as PDF, a data file for other programs, and a calendar entry if something is due.
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
## On paper

next-paper-record = Delivery record
next-paper-card = Delivery card for the crew
next-paper-delivery = Delivery
next-paper-readings = Readings
next-paper-supplier = Supplier
next-paper-delivered = Delivered
next-paper-promised = Promised at most
next-paper-boards = Boards
next-paper-boards-value = { $count } boards, { $width } face, { $thickness } thick
next-paper-species = Species
next-paper-species-sold = { $species }, taken for what is sold as { $sold_as }
next-paper-joints = Joints
next-paper-planned = Planned as
next-paper-not-cooled = no AC, no dehumidifier
next-paper-air = Room when measured
next-paper-air-value = { $temperature }, { $humidity } humidity
next-paper-house = Heated to
next-paper-wanted = Wanted by
next-paper-meter = Meter set to
next-paper-stack = Stack
next-stack = { $piling }, in { $kept }
next-stack-opened =
    { $before ->
        [solid] { $stack }, board on board until { $date }
       *[wrapped] { $stack }, wrapped until { $date }
    }
next-paper-measured-by = Measured by
next-paper-reading = Reading
next-paper-presets = The wood temperature was left at its preset, { $wood }.
next-paper-wood = Wood temp.
next-paper-blanks = Readings
next-paper-blank-board = Board
next-paper-blank-reading = Reading, %
next-paper-sign-measured = Measured by
next-paper-sign-received = Received by
next-card-stickers =
    { $lie ->
        [yes] Keep the boards on stickers in the room: stickers every { $apart }, lined up one above the other.
       *[no] Put the boards on stickers in the room right away: stickers every { $apart }, lined up one above the other.
    }
next-card-where = Meter boards from the top, middle and bottom of the stack, { $end } or more from an end.
next-card-pins = Drive the pins along the grain, a quarter of the thickness deep. Set the meter to the species. Write each reading as the meter shows it, with the wood’s temperature beside it.
next-card-compare = To compare a reading with a range on this card, correct it for the wood’s temperature by the meter’s chart.
next-card-type = Call in the readings before you hang a board.
next-card-hang = Leave the gap above at every joint.
next-card-hang-soon = Hang them within a few days. If they lie longer, meter 8 of them again.
next-card-single = Set aside a board that reads 3% or more over or under the others.
next-card-back = Don’t hang these boards, and don’t cut them.
next-card-cover = Leave the boards as they are ({ $stack }), off the floor and dry, until they’re picked up.
next-card-photos = Take a photo of the stamp, the delivery note, and the meter in a board. Keep the record with them.
next-card-change = Don’t hang these boards until the plan is changed.
next-card-sort = Meter every board and write its reading on the back.
next-card-piles = Make two piles: dry enough to hang, and too wet. Put the wet pile on stickers in the room.
next-paper-untitled = Boards for the next install
next-calendar = Meter the boards: { $title }
next-calendar-hang = Hang the boards: { $title }
next-calendar-meter-hang = Meter 8 boards, then hang: { $title }
next-calendar-back = Send the boards back: { $title }

pick-record = Write the record
    .field = Folder for the record
    .button = Write

why-next-install = Before the next install
