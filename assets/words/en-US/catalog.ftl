### The Catalog room: prices and rates, each with its source.

catalog-heading = Prices and rates of this job
catalog-kept-since = Kept with the job since { $date }. A newer program or price file won’t change them. Hover over a name to see where its figures come from.
catalog-not-kept = These are the program’s own. They are kept with the job when it is first saved. Hover over a name to see where its figures come from.
catalog-sealants = Sealants
catalog-paints = Primers and paints
catalog-materials = Other materials
catalog-tasks = Tasks and their minutes
catalog-boards = Boards
catalog-methods = Your own repair options
catalog-money-elsewhere = Wages, tax, and currency are under Price. They are kept for new jobs along with these.

offer-from = Prices from { $from }
offer-entry = in the list
offer-none = not there
offer-same = They are the same as the job’s.
offer-more = and { $count } more
offer-field =
    { $field ->
        [name] Name
        [class] Class
        [stretch] Stretch limit
        [squeeze] Squeeze limit
        [solids] Solids
        [cure] Cure time
        [packs] Sizes and prices
        [film] Dry film of one coat
        [transfer] Transfer efficiency
        [sprayed] Transfer efficiency, sprayed
        [recoat] Recoat after
        [per] Measured by
        [coverage] One piece covers
        [batch] Batch size
        [minutes] Minutes per batch
        [fixed] Minutes besides, whatever the amount
        [also] Second rate
        [price] Price of one piece
        [priced] Priced on
        [kind] Kind of source
        [source] Source
        [species] Species
        [face-width] Face width
        [overall-width] Overall width
        [thickness] Thickness
        [other-boards] Profile, nailing, paint
        [look] Looks like afterward
        [disruption] During the work
        [letter] What the letter says
        [outcome] Result at the joints
        [materials] Materials
       *[steps] Steps
    }
offer-minutes = { $least } to { $most }, likely { $likely }
# A second rate of a task: 6.5 min per 10 ft of board. The amount has its unit.
offer-also = { $minutes } min per { $amount } { $unit }
offer-pack = { $pack } of { $holds } for { $price }
offer-can = { $holds } for { $price }
offer-differs = different
offer-take = Use these prices
offer-leave = Leave the job as it is

learned-jobs = { $count ->
    [0] No job in that folder has actual hours or pieces used. Enter them under Follow-up first.
    [one] From 1 finished job
   *[other] From { $count } finished jobs
}
learned-column-task = task
learned-column-start = catalog, min
learned-column-yours = yours, min
learned-column-jobs = jobs
learned-column-weight = their weight
learned-column-material = material
learned-column-waste-start = catalog, waste
learned-column-waste-yours = yours, waste
learned-use = Use these rates
learned-leave = Leave the rates as they are

entry-name = Name in the catalog
entry-copy = Copy under a new name
entry-copy-name = { $name } (copy)
entry-restore = Restore built-in figures
entry-remove = Remove
entry-price = Price in the catalog
entry-priced = Priced on { $date }.
entry-not-priced = No date was noted for this price.
entry-stretch = Stretch limit, %
    .hint = Of its width when sealed
entry-squeeze = Squeeze limit, %
    .hint = Of its width when sealed
entry-solids = Solids, %
    .hint = What is left once it has cured, by volume
entry-cure = Cure time, hr
    .hint = Before it can be painted
entry-pack-price = Price of a { $pack }, { $holds }
entry-pack-holds = Pack size
entry-pack-size =
    { $units ->
        [inches] Size of a { $pack }, fl oz
       *[millimeters] Size of a { $pack }, mL
    }
entry-film = Dry film of one coat
entry-film-in =
    { $units ->
        [inches] Dry film of one coat, mils
       *[millimeters] Dry film of one coat, µm
    }
entry-transfer = Transfer efficiency, %
    .hint = How much of the paint ends up on the wood with brush and roller
entry-sprayed = Transfer efficiency, sprayed, %
    .hint = How much of the paint ends up on the wood with a sprayer
entry-recoat = Recoat after, hr
entry-can-price = Price of { $holds }
entry-piece-for = One piece covers
entry-piece-price = Price of one piece
entry-minutes = Minutes for one person per batch: low, likely, and high.
entry-least = Low, min
entry-likely = Likely, min
entry-most = High, min
entry-batch = Batch size
entry-fixed = Besides, min
    .hint = Minutes it takes however much there is, once there is any
entry-also = And by a second measure, min
    .hint = Minutes for a batch of what is named below; they come on top
entry-also-batch = Second batch size
entry-own-rate = your own rate
entry-source = { $source } ({ entry-kind })
entry-class-source = { $class }. { $source } ({ entry-kind })
entry-kind = { $kind ->
    [published] published
    [from_memory] from memory
    [common_practice] common practice
   *[assumption] assumption
}
entry-no-boards = None yet. Keep the boards of a section here under a name, and use them elsewhere.
entry-board = { $species }, { $wide } wide, { $thick } thick
entry-lay-boards = Use in every section shown
entry-keep-boards = Keep the boards of…
entry-section = section { $section }
undo-keep-boards = Keep the boards of a section

own-none = None yet. Start from the option selected under Options and change its steps.
own-add = Add an option like the selected one
own-name = { $name } (mine)
own-remove = Remove this option
own-field-name = Option name
own-field-look = Looks like afterward
own-field-living = During the work
own-field-letter = What the letter says
own-leaves = Result at the joints
own-outcome-bridge = a bead across the V
own-outcome-tongue = a bead down to the tongue
own-outcome-reveal = a bead over tape in a wider joint
own-outcome-held = a bead, with the room kept at 40% to 50% humidity
own-outcome-line = open lines by design
own-outcome-covered = strips over the joints
own-outcome-glued = boards glued together
own-outcome-boards = boards laid tight, dried to the room
own-outcome-unchanged = the joints as they are
own-outcome-less = boards that move less
own-wait-primer = wait for the primer
own-wait-sealant = wait for the sealant
own-wait-paint = wait for the paint
own-wait-acclimation = wait for boards to acclimate
own-wait-season = wait for the best weeks
own-materials = Materials other than sealant and paint
own-step-coats = { $task } (with a wait after each)
own-step-earlier = Move up: { $step }
own-step-remove = Remove: { $step }
own-step-add = Add a step…
undo-move-step = Move step
undo-remove-step = Remove step
undo-add-step = Add step
