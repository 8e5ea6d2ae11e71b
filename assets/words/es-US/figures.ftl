### Figures: how numbers, quantities and money are set. `$number` selects the plural form, too.

language-name = Español (EE. UU.)

unit-millimeters = { $number } mm
length-under = menos de { $length }
unit-meters = { $number } m
unit-feet =
    { $number ->
        [one] { $number } pie
       *[other] { $number } pies
    }
unit-square-feet =
    { $number ->
        [one] { $number } pie²
       *[other] { $number } pies²
    }
unit-square-meters = { $number } m²
unit-square-inches = { $number } pulg²
unit-square-centimeters = { $number } cm²
unit-gallons = { $number } gal
unit-fluid-ounces = { $number } oz líq
unit-liters = { $number } L
unit-milliliters = { $number } mL
unit-percent = { $number }%
unit-fahrenheit = { $number }°F
unit-celsius = { $number }°C
unit-minutes = { $number } min
unit-hours = { $number } h

money-sign = { $currency }{ $amount }
money-sign-negative = -{ $currency }{ $amount }
money-code = { $currency } { $amount }
money-code-negative = -{ $currency } { $amount }
unit-days =
    { $number ->
        [one] { $number } día
       *[other] { $number } días
    }
unit-years =
    { $number ->
        [one] { $number } año
       *[other] { $number } años
    }
unit-mils =
    { $number ->
        [one] { $number } mil
       *[other] { $number } mils
    }
unit-microns = { $number } µm
unit-degrees = { $number }°
unit-grams-per-cubic-meter = { $number } g/m³
unit-grains-per-cubic-foot = { $number } gr/pie³
unit-quarts = { $number } qt
unit-cubic-feet =
    { $number ->
        [one] { $number } pie³
       *[other] { $number } pies³
    }
unit-cubic-meters = { $number } m³
unit-miles =
    { $number ->
        [one] { $number } milla
       *[other] { $number } millas
    }
unit-kilometers = { $number } km
