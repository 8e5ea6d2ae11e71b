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
options-lasts = { $chance } stays closed
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
sealing-heading = Sealing
sealing-best = Best sealed { answer-best-weeks }: { $holds } of the joint length then stays within the sealant’s class.
sealing-planned = Quantities and prices are for sealing on { $day }.
sealing-typical = A typical bead is then stretched { $stretch } and squeezed { $squeeze }.
sealing-never = { $run } of joint is too narrow to seal in any week.
sealing-joint = Joint { $joint } is stretched { $stretch } and squeezed { $squeeze }, and its sides slide { $shear }. The lowest class that takes it: { $sealant }.
sealing-joint-none = Joint { $joint } is stretched { $stretch } and squeezed { $squeeze }, and its sides slide { $shear }. No sealant in the catalog takes it.
sealing-row =
    { $torn ->
        [one] Section { $section }: about 1 of { $joints } sealed joints tears once the row of boards has moved as far as it will.
       *[other] Section { $section }: about { $torn } of { $joints } sealed joints tear once the row of boards has moved as far as it will.
    }
sealing-row-widest =
    { $torn ->
        [one] Section { $section }: about 1 of { $joints } sealed joints tears once the row of boards has moved as far as it will. The widest opens to { $widest }.
       *[other] Section { $section }: about { $torn } of { $joints } sealed joints tear once the row of boards has moved as far as it will. The widest opens to { $widest }.
    }
sealing-guide = Sealant guides cover joints { $least } and wider, with backer rod behind. Joints between interior boards are narrower, and the bead also sticks to the tongue behind it. Take these shares as a guide, not a promise.
