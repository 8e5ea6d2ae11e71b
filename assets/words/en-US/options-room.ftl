### The Options room: repairs side by side, the bead of the chosen one.

# Where there is no figure to show.
no-figure = –

options-none = Draw the boards first. The repair options follow from them.
options-heading = Repair options
options-group-best = The one to choose
options-group-equal = As good as each other
options-group-other = Others
options-group-against = { $count ->
    [one] 1 that won’t last or can’t be done here
   *[other] { $count } that won’t last or can’t be done here
}
options-name = { $number }. { $option }
options-price-range = { $low } to { $high }
options-with-callbacks = { $total } with callbacks
options-lasts = { $chance } no callback
options-price-drivers = What moves it most, from a good day to a bad one: { $drivers }.
options-price-driver = { $what } ({ $swing })
options-days =
    { $crew ->
        [0] No days on site.
        [one] 1 day on site; { $calendar } from first to last. { $out ->
            [0] The room stays in use.
            [one] The room is out of use for 1 day.
           *[other] The room is out of use for { $out } days.
        }
       *[other] { $crew } days on site; { $calendar } from first to last. { $out ->
            [0] The room stays in use.
            [one] The room is out of use for 1 day.
           *[other] The room is out of use for { $out } days.
        }
    }
options-chance-range = { $chance } ({ $low } to { $high })
options-paint-range = If the paint over the bead doesn’t crack, the chance of a callback is { $without }. No one has published how far wall paint stretches in a dry winter. In the lab, acrylic paint takes over 50% in damp air and less in dry air, so nobody can narrow this down for you.
options-afterward = Afterward: { $look }. During the work: { $disruption }.
options-chance = Chance of a callback
options-total = Total with callbacks

options-plot = Chance of a callback by price: { $options }
options-plot-title = chance of a callback, by price
options-plot-point = { $number }. { $option }: { chance-percent }
options-plot-legend = The numbers match the list above. The line joins the options that no other beats on both price and chance. The ringed one comes first: it costs least with callbacks included, or disrupts least of those that cost about the same.

options-cautions = Cautions
options-caution = { $title }. { $text }
options-caution-source = { $source } ({ label-source-kind })

## The bead

# What a screen reader says of a picture.
options-still = A joint in { $month }: { $says }
options-bead-still = { $option }, in { $month }: { $says }
options-beads = All beads in January and August
sealing-heading = Sealing
sealing-best = Best sealed { answer-best-weeks }: { $holds } of the joint length then stays within the sealant’s class.
sealing-planned = Quantities and prices are for sealing on { $day }.
sealing-typical = A typical joint then opens { $opens } and closes { $closes }.
sealing-never = { $run } of joint is too narrow to seal in any week.
sealing-joint = Joint { $joint } is { $gap } wide when it’s sealed. From there it opens { $opens } and closes { $closes }{ $slid ->
    [yes] , and its sides slide { $slides }.
   *[no] .
}
sealing-joint-takes = The bead across it is about { $bead } wide, so the lowest class that takes that is: { $sealant }.
sealing-joint-none = No sealant in the catalog takes that in a bead laid this way.
sealing-row = Section { $section }: most likely none of { $joints } sealed joints tears, even once the row of boards has moved as far as it will.
sealing-row-widest =
    { $torn ->
        [one] Section { $section }: about 1 of { $joints } sealed joints tears once the row of boards has moved as far as it will. The widest opens to { $widest }.
       *[other] Section { $section }: about { $torn } of { $joints } sealed joints tear once the row of boards has moved as far as it will. The widest opens to { $widest }.
    }
bead-finding-tape = The slot is { $value } wide. Tape needs { $least } to lie flat, so nothing goes behind this bead.
bead-finding-rod = The slot is { $value } wide. The smallest backer rod needs { $least }.
bead-finding-rod-depth = A bead over backer rod has to go { $least } into the slot. This one goes { $value }.
bead-finding-sinks = This bead is too thin: after it cures, { $value } is left in the middle.
bead-finding-feather = Tooled this hollow, the bead feathers out at its edges and peels.
bead-finding-nozzle = The bead goes { $value } into the slot. In a slot this narrow a nozzle only pushes caulk { $most } deep.
bead-finding-finger = A fingertip only reaches { $most } into this V. The bead lies { $value } deep: use a narrow caulk tool.
bead-finding-hides-v = Filled to the top, the V won’t show.
bead-shape-v = { $level ->
    [full] Fill the V level with the boards’ faces
   *[below] Fill the V until the caulk’s face sits { $below } below the boards’ faces ({ $fill } of its depth)
}, tooled { $tooled ->
    [hollow] hollow
   *[flush] flat
}{ $into ->
    [tongue] , all the way down to the tongue.
    [slot] , { $depth } into the slot.
   *[v] {""}. Leave the slot behind it empty.
}
bead-shape-square = Lay the bead { $depth } deep, tooled { $tooled ->
    [hollow] hollow
   *[flush] flat
}.
bead-design-heading = Design the bead
bead-design-joints = { $kind ->
    [trim] Against trim
   *[boards] Between boards
}: { $run }, gaps about { $gap }
bead-design-backed = Put backer behind it.
bead-design-lasts = Sealed { answer-best-weeks }, it should last on { $lasts } of the length, and the paint over it on { $paint }.
bead-design-usual = Pushed in and wiped with a finger today, the same caulk should last on { $lasts }.
bead-design-takes = It takes { $sealant } of caulk ({ $cost }) and { $minutes } of one person; the usual bead takes { $usual }.
bead-design-warning = Don’t push the caulk in and wipe it with a finger: that bead should last on { $usual } of the length, this one on { $best }.
bead-design-take = Use this bead
    .hint = Puts this shape into the plan. You can undo it.
bead-design-column-sealant = caulk
bead-design-column-lasts = lasts on
    .hint = Share of the joint length on which the best bead of this caulk should last
bead-design-column-usual = usual bead
    .hint = The same, pushed in and wiped with a finger on the day of the visit
bead-design-column-cost = cost
    .hint = Caulk for the best bead, waste included
bead-design-column-minutes = minutes
    .hint = One person: run, tool, and back the bead, and a second one where it sinks
bead-design-cost = { $cost }
bead-design-note = Tried are beads that leave at least a fifth of the V open, no deeper than a nozzle pushes caulk in, in every week of the year.
sealing-guide = Sealant guides cover joints { $least } and wider, with backer rod behind. Joints between interior boards are narrower, and the bead also sticks to the tongue behind it. Take these shares as a guide, not a promise.
