### The build-up of a price.

price-line =
    { $line ->
        [labour] Labor
        [materials] Materials
        [callbacks] Callbacks
        [equipment] Equipment
        [overhead] Overhead
        [contingency] Contingency
        [profit] Profit
        [minimum] To minimum charge
        [tax] Sales tax
       *[rounding] Rounding
    }

price-line-markup = Markup on materials

price-basis-labor =
    { $hours ->
        [one] 1 hour at { $rate }
       *[other] { $hours } hours at { $rate }
    }
price-basis-labor-burden =
    { $hours ->
        [one] 1 hour at { $rate } ({ $wage } + { $burden } labor burden)
       *[other] { $hours } hours at { $rate } ({ $wage } + { $burden } labor burden)
    }
price-basis-charge-out =
    { $hours ->
        [one] 1 hour at { $rate }, everything included
       *[other] { $hours } hours at { $rate }, everything included
    }
price-basis-trades = painter { $painter } hr at { $painter_rate } + carpenter { $carpenter } hr at { $carpenter_rate }, burden included
price-basis-materials = as listed
price-basis-equipment =
    { $days ->
        [one] 1 day at { $per_day }
       *[other] { $days } days at { $per_day }
    }
price-basis-overhead = { $share } of labor, materials, and equipment
price-basis-contingency = { $share } chance of covering the cost
price-basis-callbacks =
    { $years ->
        [one] expected in 1 year of warranty
       *[other] expected in { $years } years of warranty
    }
price-basis-profit = { $share } markup on all lines above
price-basis-markup = { $share } markup on materials and equipment
price-basis-minimum = the minimum charge is { $amount }
price-basis-tax =
    { $on ->
        [materials] { $rate } of materials
       *[everything] { $rate } of all lines above
    }
price-basis-rounding = to the nearest { $step }

# A note inside the firm, not to the homeowner.
price-no-reserve =
    { $years ->
        [one] You warrant this for 1 year, and the price holds nothing for callbacks. Expected: about { $amount }. Under Pricing you can add them to the price.
       *[other] You warrant this for { $years } years, and the price holds nothing for callbacks. Expected: about { $amount }. Under Pricing you can add them to the price.
    }
price-helper = Long boards overhead take two people. You need a helper on those days, who is in the price.
price-driver-rates = How well untimed rates fit your crew
price-driver-material-prices = Material prices
