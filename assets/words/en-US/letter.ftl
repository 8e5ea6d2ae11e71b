### The homeowner's letter, in sentences. Each stands alone or is followed by the next with a space.

letter-heading-saw = What we saw
letter-heading-why = What happened
letter-heading-moves = What to expect
letter-heading-plan = What we’ll do
letter-heading-asks = What we ask of you
letter-heading-more = Anything else

## What we saw

letter-no-gaps = We haven’t measured any gaps yet.
letter-measured = On { $date } we measured { $joints ->
    [one] 1 joint
   *[other] { $joints } joints
}.
letter-open = { $open ->
    [0] { $joints ->
        [one] It isn’t open.
       *[other] None is open.
    }
    [one] { $joints ->
        [one] It is open by { $widest }.
       *[other] One is open, by { $widest }.
    }
   *[other] { $open } are open, the widest by { $widest }.
}
letter-moisture = The boards are at about { $moisture }% moisture content today. That is our best estimate from { $readings ->
    [one] 1 meter reading
   *[other] { $readings } meter readings
} and the room’s air.
letter-moistures = The boards are at about { $low }–{ $high }% moisture content today. That is our best estimate from { $readings ->
    [one] 1 meter reading
   *[other] { $readings } meter readings
} and the room’s air.

## What happened

letter-wetted = Some of your boards got wet. Wet boards swell and crush each other’s edges, and when they dry the gaps are wider than before.
letter-framing-moved = One joint is open far more than the rest, so the framing behind it has probably moved. We’ll look at that first.
letter-weak-sealant = A good sealant handles this much movement, but the one in your joints let go at small openings.
letter-wood-moves = Wood takes on and gives off moisture with the air around it, and a board gets narrower as it dries.
letter-install-moisture = Going by the gaps, the boards were at about { $moisture } moisture when installed (likely between { $low } and { $high }). Wood in your room settles near { $room }.
letter-not-possible = “{ $option }” can’t be done here. { $reason } So there is no price for it.
letter-advised-against = We advise against this repair: the joints would most likely open again. We would do it only if you ask for it, and we can’t warrant it.
letter-too-wet-likely = Most likely the boards were too wet for this room ({ chance-percent }), but the readings don’t settle it. As boards dry they get a little narrower, and the shrinkage shows as gaps. Caulk put in before they dried couldn’t stretch that far.
letter-too-wet-open = The readings can’t tell whether the boards were too wet for this room or this is ordinary seasonal movement.
letter-too-wet = The readings point clearly to boards that were too wet for this room when they went up. As they dried, each one got a little narrower, and the shrinkage shows as gaps. Caulk put in before they dried couldn’t stretch that far.
letter-seasonal-likely = Most likely the boards were about as dry as they should have been, and this is ordinary seasonal movement: the joints open in the dry season and close again on their own. The readings don’t settle it.
letter-seasonal = The readings point to boards that were about as dry as they should have been. What you see is ordinary seasonal movement: the joints open in the dry season and close again on their own.
letter-seasonal-rest = The other boards were most likely about as dry as they should have been. What they show is ordinary seasonal movement.
letter-past-tongue = In { $count ->
    [one] section
   *[other] sections
} { $sections } the joints open past the boards’ tongues; caulk can’t hold that.
letter-wet-sections = The boards in { $count ->
    [one] section
   *[other] sections
} { $sections } are wetter than the air in the room can make them. Water has gotten in there, and may still be getting in. That has to be found and fixed, and the boards have to dry, before anything is sealed. Our price doesn’t include it.

## What to expect

letter-keeps-opening = Left alone, a typical joint, { $now } wide today, keeps opening: to { $widest } in the driest weeks.
letter-closes = Left alone, a typical joint, { $now } wide today, will be closed in the most humid weeks (around { $month }) and { $widest } wide in the driest.
letter-moves = Left alone, a typical joint, { $now } wide today, will be about { $narrowest } in the most humid weeks (around { $month }) and { $widest } in the driest.

letter-room-runs = As you live in it now, the room runs from about { $low } humidity in its driest days to about { $high } in its dampest.

## What we'll do

letter-replace = We take the boards down and install new ones that have dried to your room first: we stack them in the room, with air all around, until the meter says they’re ready. We paint them on all sides before they go up, tongues too, so no bare wood shows when they move.
letter-new-joints = In the driest weeks the new joints will open to about { $widest }.
letter-too-narrow = Most of the open joints are narrower than { $narrowest } even in their best weeks for sealing. Sealant has nothing to grip there and would tear again. We recommend leaving them unsealed, with the V cleaned and painted. If you want them sealed anyway, they have to be opened up first; the price below is for sealing without that.
letter-reseal = We clean out the joints, prime the bare edges, seal { $run } of joints, and give the whole surface { $coats ->
    [one] 1 coat of paint
   *[other] { $coats } coats of paint
}. The sealant we use: { $sealant }.
letter-reseal-joints = We clean out the joints, prime the bare edges, seal { $run } of joints, and brush { $coats ->
    [one] 1 coat of paint
   *[other] { $coats } coats of paint
} over them. The rest of the paint stays, so the new paint may show a little beside it. The sealant we use: { $sealant }.
letter-not-counted = Joints at board ends, miters, and the edges ({ $run }) are not part of this: we haven’t measured them.
letter-seal-on = We plan to seal on { $date }.
letter-best-weeks = The best time is between { $from } and { $to }: sealed then, the new bead is stretched least over the year.
letter-most-weeks = Between { $from } and { $to }, one week is as good for sealing as another.
letter-any-time = Any time of year works.
letter-reopening = { $band ->
    [under] The chance that something shows at the joints again { $years ->
        [one] within 1 year
       *[other] within { $years } years
    } is under { $chance }.
    [over] The chance that something shows at the joints again { $years ->
        [one] within 1 year
       *[other] within { $years } years
    } is over { $chance }.
   *[plain] The chance that something shows at the joints again { $years ->
        [one] within 1 year
       *[other] within { $years } years
    } is about { $chance }.
}
letter-reopening-open = { $why ->
    [paint] That is our best estimate, and far from sure: nobody can say how far the paint stretches before it shows fine cracks.
   *[house] That is our best estimate, and far from sure: not everything about the house is known.
}
letter-reopening-range = Not everything about the house is known, so it could be anywhere from { $low } to { $high }.
letter-reopening-paint = { $band ->
    [under] Most of that is fine cracks in the paint over caulk that holds. Those can be touched up; our warranty doesn’t cover that. The caulk itself opens in under { $chance } of cases.
    [over] Part of that is fine cracks in the paint over caulk that holds. Those can be touched up; our warranty doesn’t cover that. The caulk itself opens in over { $chance } of cases.
   *[plain] Part of that is fine cracks in the paint over caulk that holds. Those can be touched up; our warranty doesn’t cover that. The caulk itself opens in about { $chance } of cases.
}
letter-days = The work will take us { $days ->
    [one] 1 day
   *[other] { $days } days
}.
letter-days-closed = The work will take us { $days ->
    [one] 1 day
   *[other] { $days } days
}, and we need the room closed for { $closed ->
    [one] 1 day
   *[other] { $closed } days
}.

## What we ask of you

letter-ask-humidity = Our figures count on the room staying between about { $low } and { $high } humidity year-round; a small hygrometer will show you.
letter-ask-call-open = The joints show an open line on purpose, and it changes with the seasons: the widest should come to about { $widest } in the driest weeks. Call us if one opens clearly wider than that, or if a spot looks damp.
letter-ask-call = Hairline gaps in the driest weeks are normal. Call us if one opens wider than { $widest } ({ $cards ->
    [one] about as thick as a credit card
   *[other] about { $cards } credit cards stacked
}), or if a spot looks damp, and we’ll take a look.{ $warranted ->
    [yes] {" "}What the warranty covers is in our proposal.
    [later] {" "}Our proposal will say what the warranty covers.
   *[no] {""}
}
letter-ask-call-covered = Call us if something splits or works loose, or if a spot looks damp.
letter-paint-all = Then we give the whole surface { $coats ->
    [one] 1 coat of paint
   *[other] { $coats } coats of paint
}.
letter-starts = We can start on { $date } at the earliest.
letter-left-open = { $count ->
    [one] 1 more joint is too narrow to seal: we clean it out and paint it, and it stays open.
   *[other] { $count } more joints are too narrow to seal: we clean them out and paint them, and they stay open.
}
letter-done-by = With the time things take to dry, we will be done around { $date }.
letter-planned = We plan to start on { $date }.
letter-comes-back = We come back around { $date }.
letter-ask-call-left = The gaps get wider in the dry season and narrower in the humid season. Call us if one opens much wider than we told you, or if a spot looks damp.
letter-ask-visit = { $years ->
    [0] Let us take another look after the first full year.
    [one] Let us take another look before the first year is up.
   *[other] Let us take another look after the first full year, and any time within { $years } years.
}
