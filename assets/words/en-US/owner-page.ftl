### The homeowner's page for a phone, a desktop or paper. What it shares with the letter and the window's
### homeowner pages is said by their messages.

## In short

owner-page-short = In short
owner-page-repair = The repair
owner-page-when = When
owner-page-when-seal = { $when ->
    [on] { $from }
    [between] { $from } to { $to }
   *[any_time] Any time of the year
}
owner-page-starts = From { $date }
owner-page-days = { $days ->
    [one] 1 day of work
   *[other] { $days } days of work
}
owner-page-days-from = { $days ->
    [one] 1 day of work, planned from { $date }
   *[other] { $days } days of work, planned from { $date }
}
owner-page-of-total = of { $total }
owner-page-you-pay = { $owner } for you, of { $total }
owner-page-reopening = Chance that cracks or gaps show again
owner-page-within = { $years ->
    [one] within 1 year
   *[other] within { $years } years
}
owner-page-within-open = { $years ->
    [one] within 1 year
   *[other] within { $years } years
}, but that is far from sure: { $why ->
    [paint] nobody can say how far the paint stretches before it shows fine cracks
   *[house] not everything about the house is known
}
owner-page-within-range = { $years ->
    [one] within 1 year; could be { $low } to { $high }
   *[other] within { $years } years; could be { $low } to { $high }
}

## What happened

owner-page-no-blame = This is about what the wood did. It doesn’t say who is at fault.

## The joint through the seasons

owner-page-either = With or without the repair
owner-page-after = With the repair
owner-page-before = If nothing is done
owner-page-strip = A dozen of your boards, seen from the room
owner-page-strip-note = Above: a dozen boards seen from the room, gaps drawn 10 times actual width. All joints are drawn like the typical one; yours differ.
owner-page-cut = A joint between two boards, cut through
owner-page-cut-note = One joint cut through, drawn to scale, room side up.
owner-page-key-wood = wood
owner-page-key-paint = paint
owner-page-key-bead = new bead
owner-page-key-gap = open gap
owner-page-slider = Date
owner-page-play = Play
owner-page-pause = Pause
owner-page-installed = Installed
owner-page-today = Today
owner-page-sealed = Sealed
owner-page-repaired = Repaired
owner-page-widest = Widest gap
owner-page-still-before = { $month }, if nothing is done
owner-page-still-after = { $month }, with the repair

owner-page-closed = The joint is closed.
owner-page-open = The joint is open by { $gap }.
owner-page-bead-holds = The boards are { $gap } apart. The new bead moves with them and holds.
owner-page-bead-holds-here = The boards are { $gap } apart. This bead holds; others won’t.
owner-page-just-sealed = Just sealed, with the boards { $gap } apart.
owner-page-bead-torn = The bead has torn, and a crack of { $open } shows.
owner-page-bead-torn-closed = The bead has torn. The crack is closed for now.
owner-page-bead-squeezed = The bead was squeezed too far, and bulges out.
owner-page-too-narrow = The joint is too narrow to seal. It is painted and left open, { $gap } wide now.
owner-page-line = A clean line, { $gap } wide. The wood behind it is painted, so no bare wood shows.
owner-page-line-closed = The line is closed. It opens again in the dry season, with painted wood behind it.
owner-page-covered = A strip hides the joint. Behind it the boards are { $gap } apart.
owner-page-covered-closed = A strip hides the joint. Behind it the boards are tight.
owner-page-glued = The boards are glued together here, and no gap shows.
owner-page-laid = Boards laid tight and dried to your room: the joint is open by { $gap }.
owner-page-laid-closed = Boards laid tight and dried to your room: the joint is closed.
