### Figures: how numbers, quantities and money are set. `$number` selects the plural form, too.

language-name = English (US)

unit-millimeters = { $number } mm
length-under = under { $length }
unit-meters = { $number } m
unit-feet = { $number } ft
unit-square-feet = { $number } sq ft
unit-square-meters = { $number } m²
unit-square-inches = { $number } sq in
unit-square-centimeters = { $number } cm²
unit-gallons = { $number } gal
unit-fluid-ounces = { $number } fl oz
unit-liters = { $number } L
unit-milliliters = { $number } mL
unit-percent = { $number }%
unit-fahrenheit = { $number }°F
unit-celsius = { $number }°C
unit-minutes = { $number } min
unit-hours = { $number } hr

money-sign = { $currency }{ $amount }
money-sign-negative = -{ $currency }{ $amount }
money-code = { $currency } { $amount }
money-code-negative = -{ $currency } { $amount }
unit-days =
    { $number ->
        [one] { $number } day
       *[other] { $number } days
    }
unit-years =
    { $number ->
        [one] { $number } year
       *[other] { $number } years
    }
unit-mils =
    { $number ->
        [one] { $number } mil
       *[other] { $number } mils
    }
unit-microns = { $number } µm
unit-degrees = { $number }°
unit-grams-per-cubic-meter = { $number } g/m³
unit-grains-per-cubic-foot = { $number } gr/cu ft
unit-quarts = { $number } qt
unit-cubic-feet = { $number } cu ft
unit-cubic-meters = { $number } m³
unit-miles = { $number } mi
unit-kilometers = { $number } km
