### Where a number comes from: shown when the number is clicked.

explain-ask = { $what }: where does this come from?
    .hint = Click to see where this comes from

explain-of = { $count } of { $all }
explain-range = { $low } to { $high }
explain-both = { $first } and { $second }

explain-mean-gap = The average over all joints: measured ones as you read them, the others as estimated from the plausible histories of this room. If you picked wide joints to measure, the rest are narrower. ± is its standard error.
    .source = Importance sampling over plausible histories; assumptions in assets/belief.ron
explain-joints-measured = joints measured
explain-scatter = scatter from joint to joint

explain-now = The meter readings, corrected for the wood’s temperature and weighed against the moisture the room’s air over the year would bring the boards to.
    .source = USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010); drying by implicit finite volumes, checked against Crank, The Mathematics of Diffusion
explain-readings = readings
explain-expected-today = expected from the room today

explain-install = The boards’ most likely moisture when installed: we work out many histories from install to today, and each counts by how well it fits the gaps, the meter, and the room. In each, drying narrows a board by ΔD = D · C · (M₂ − M₁) between 6% and 14%, and by total shrinkage beyond that.
    .source = USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), eq. 13-2 and Table 13-5 for the shrinkage, eq. 4-5 for the equilibrium
explain-gap-today = gap today
explain-width-at-joint = width that shows at a joint, D
explain-coefficient = C, per percent of moisture
explain-moisture-today = moisture today

explain-settled = The driest and wettest the boards get in a year, once the moisture they came with no longer matters: the room’s air, day by day, dried through the boards’ thickness and paint.
    .source = USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), eq. 4-5 for the equilibrium; room air from the climate, a weather file, or a logger
explain-room-humidity = room humidity
explain-mean-of-year = average over the year

explain-widest = Today’s gap, plus how much the boards still shrink by the driest weeks of the coming year.
    .source = USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), eq. 13-2; the days are on the timeline
explain-driest = driest in a settled year

explain-chance = In this share of { $trials } simulations, the homeowner calls back within { $years ->
    [one] 1 year
   *[other] { $years } years
} because { $share } of the joint length is open, or one gap over { $gap }.
    .source = Monte Carlo over plausible histories, with the same draws for every option
explain-interval = range, 9 times in 10
explain-without-paint = without cracks in the paint alone
explain-tears = if tears behind the beads stay hidden, or all show
explain-tears-range = { $low } or { $high }
explain-converged = after a quarter and half the runs
explain-opens-again = opens again on average
explain-drawn = varied
explain-drawn-what = weather from year to year, lot of boards, lot of sealant, readings, workmanship
explain-capability = a bead can take
explain-times-class = { $times } times its class ({ $kind ->
    [published] published
    [from_memory] from memory
    [common_practice] common practice
   *[assumption] assumption
})

explain-expected = The price, plus the callbacks to expect in each warranty year: the chance of one times the cost of the visit (15% of the price, an assumption), and 85% of the price for the share of the work that opens and is redone. At present value. Failures that movement doesn’t tell, such as a strip that splits, come on top.
    .source = Present value: ASTM E917
explain-year-chance = chance of a callback in one year
explain-year-redone = of the work, done again in one year
explain-year-cost = one year is expected to cost
explain-price = price
explain-nothing = Nothing is charged here now.
