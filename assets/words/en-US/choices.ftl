### Choices of a few, as they stand beside their field.

choice-access-steps = step stool
choice-access-ladder = ladder
choice-access-scaffold = scaffold
choice-old-caulk-cuts = cuts clean
choice-old-caulk-hard = hard
choice-old-caulk-soft = soft and sticky
choice-room-furnished = furnished
choice-room-tight = tight access
choice-workdays-weekdays = weekdays
choice-workdays-weekends = weekends too
choice-tax-on-nothing = nothing
choice-tax-on-materials = materials
choice-tax-on-everything = everything
choice-round-to-cent = 0.01
choice-round-to-unit = 1
choice-round-to-five = 5
choice-round-to-ten = 10
choice-visits-one = one visit
choice-visits-two = open now, seal in the best weeks
choice-scope-open = open joints
choice-scope-every = every board joint
choice-air-climate = from the climate
choice-air-months = twelve months, typed in
choice-humidity-load = moisture load
choice-humidity-normal = EN 15026, normal: 30% to 60%
choice-humidity-high = EN 15026, high: 40% to 70%
