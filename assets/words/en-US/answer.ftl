### The answer: what to do, when, for how much, and what would make it surer. Each message is a sentence
### of its own; the sentences of the answer stand one after the other.

answer-draw-boards = Start with the boards: add a surface, enter its size, and choose a pattern.
answer-measure-gaps = The boards are drawn. Measure a few gaps: click a joint and type its width.
answer-fix-problems = No repair can be worked out yet. Fix the entries marked in red.

answer-water-first =
    { $count ->
        [one] First find where water is getting into section { $sections }, and let the boards dry.
       *[other] First find where water is getting into sections { $sections }, and let the boards dry.
    }

answer-reseal =
    { $when ->
        [on] Reseal on { $from } with { $sealant }.
        [between] Reseal between { $from } and { $to } with { $sealant }.
       *[any_time] Reseal at any time of the year with { $sealant }.
    }
answer-holds = The bead stays within its class on { $share } of the joint length.
answer-reseal-fails =
    { $when ->
        [on] Resealing on { $from } with { $sealant } would put { $past } of the joint length past its rating.
        [between] Resealing between { $from } and { $to } with { $sealant } would put { $past } of the joint length past its rating.
       *[any_time] Resealing with { $sealant } would put { $past } of the joint length past its rating, whenever it is done.
    }
answer-instead-sealant = { $sealant } is rated for { $share } of the length in its best weeks.
answer-instead-option = Look at this instead: { $option }.
answer-instead-unknown = No sealant in the catalog is rated for enough of the joint length. Look at replacing the boards.
answer-too-narrow =
    { $when ->
        [between] Most open joints are narrower than { $narrowest } even in their best weeks, { $from } to { $to }, so a bead has nothing to grip. Leave them unsealed and paint the V, or open them up first.
       *[other] Most open joints are narrower than { $narrowest } all year, so a bead has nothing to grip. Leave them unsealed and paint the V, or open them up first.
    }
answer-replace = Replace the boards with new ones dried to { $moisture } moisture. In the driest weeks of the year, their joints will open to { $opens }.
answer-as-chosen = { $option }. Afterward: { $look }.
answer-not-possible = { $option }: not an option here.

answer-price =
    { $days ->
        [one] About { $total } ({ $low } to { $high }) for 1 day on site.
       *[other] About { $total } ({ $low } to { $high }) for { $days } days on site.
    }
answer-price-over =
    { $days ->
        [one] About { $total } ({ $low } to { $high }) for 1 day on site.
       *[other] About { $total } ({ $low } to { $high }) for { $days } days on site, { $calendar_days } days from start to finish.
    }
answer-price-without-days = About { $total } ({ $low } to { $high }). How many days it takes isn’t known.
answer-callback =
    { $years ->
        [one] Another callback within 1 year: { chance-percent }.
       *[other] Another callback within { $years } years: { chance-percent }.
    }
answer-cheaper = Another option costs less with callbacks included.

answer-best-weeks =
    { $when ->
        [on] on { $from }
        [between] between { $from } and { $to }
       *[any_time] at any time of the year
    }

answer-cause = { cause-label }: { chance-percent }.
answer-cause-in-section = { cause-label }, section { $section }: { chance-percent }.
answer-cause-bonded = Some boards are likely stuck together in groups, too.

answer-install-line-moved = The joint that moved counts in the average of its section; the joints beside it show what the wood did.
answer-install-contradicted = By width alone, the gaps point to boards at { $moisture } moisture ({ $low } to { $high }) when installed, but the other readings say otherwise. Wood in this room settles near { $room }.
answer-install-other-boards = The other boards were at about { $moisture } moisture ({ $low } to { $high }) when installed. Wood in this room settles near { $room }.
answer-install-boards = The boards were at about { $moisture } moisture ({ $low } to { $high }) when installed. Wood in this room settles near { $room }.

answer-missing-surface = Add a surface with its size and pattern
answer-missing-fixes =
    { $count ->
        [one] Fix 1 entry, marked in red
       *[other] Fix { $count } entries, marked in red
    }
answer-missing-typed-gap = Say whether joint { $joint } is { $typed } or { $meant } wide
answer-missing-gaps =
    { $count ->
        [one] Measure 1 more gap in { $surface }, section { $section }
       *[other] Measure { $count } more gaps in { $surface }, section { $section }
    }
answer-missing-gap-for-cause = To settle the cause, measure one more gap in { $surface }, section { $section }
answer-missing-moisture-for-cause = To settle the cause, take a moisture reading of the boards in { $surface }, section { $section }
answer-missing-room-for-cause = To settle the cause, read a hygrometer in the room
answer-missing-failures-for-cause = To settle the cause, note how the bead failed at the joints you measured
answer-missing-moisture = Take a moisture reading of the boards
answer-missing-install-date = Enter the date the boards were installed
answer-missing-place = Say where the house is: town, ZIP code, or coordinates
answer-missing-year-built = Enter the year the house was built: if it’s 1978 or later, no lead-safe work is priced
answer-missing-payers = Say who pays: the boards likely went up too wet
answer-missing-timed-section = Time one section, for a firmer price
