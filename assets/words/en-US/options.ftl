### Repair options: why one is out of the question, which is best, where rates and prices are from.

option-not-possible =
    { $reason ->
        [no_open_joints] No joint is known to be open.
        [past_tongue] Joints open to { $widest }, past the tongue: an open line would be a hole.
        [too_fine_for_spline] The widest gap, { $widest }, is too narrow for a spline.
        [wide_enough] Every joint is already as wide as a reveal.
        [glued_wet] The boards are wet: glued now, they tear apart as they dry.
        [relaid_wet] The boards are wet: laid tight now, they open again as they dry.
        [strips_too_close] The joints are only { $widest } apart: strips that close together leave more strip than board.
       *[stock_too_short] The longest board is { $widest }, and no stock length is long enough for it. Add a longer one under Price, in Materials, or let the boards be butted.
    }

option-only-sections =
    { $count ->
        [one] This is for section { $sections } only, where most joints opened. Boards elsewhere stay up and are only painted.
       *[other] This is for sections { $sections } only, where most joints opened. Boards elsewhere stay up and are only painted.
    }
option-best = “{ $best }” costs least with callbacks included, about { $cost }.
option-best-and-next = “{ $best }” costs least with callbacks included, about { $cost }. Next is “{ $next }” at about { $next_cost }.
option-equal = “{ $best }” { $why ->
    [surer] is the surest to last
   *[calmer] is easiest on the household
} and costs about { $cost } with callbacks included. These cost the same, as far as anyone can tell: { $others }.
option-equal-and-more = “{ $best }” { $why ->
    [surer] is the surest to last
   *[calmer] is easiest on the household
}; it costs about { $cost } with callbacks included, about { $more } more than the cheapest. These cost about the same: { $others }.
option-margin = “{ $next }” would cost less if the option above cost { $amount } ({ $share }) more.
option-margin-or-slower = “{ $next }” would cost less if the option above cost { $amount } ({ $share }) more, or if “{ $task }” took { $times } times as long.
option-other-warranty =
    { $span ->
        [longer] { $years ->
            [one] With a warranty of 1 year or more, “{ $option }” would cost least.
           *[other] With a warranty of { $years } years or more, “{ $option }” would cost least.
        }
       *[shorter] { $years ->
            [one] With a warranty of 1 year, “{ $option }” would cost least.
           *[other] With a warranty of { $years } years or less, “{ $option }” would cost least.
        }
    }

option-rate-done = The timed section { $section }, at the minutes it took.
option-rate-own = Your own rate.
option-rate-source = { $source } ({ label-source-kind }).
option-rate-no-source = Catalog rate ({ label-source-kind }).
option-rate-condition = { $condition }: time × { $factor }
option-rate-here = { $source } Here: { $conditions }.
option-rate-timed = Your timed section { $section }: { $minutes } per batch, weight { $weight }. Catalog rate: { $start } per batch, weight { $rest }.

option-step-coat = Coat { $number }
option-step-wait =
    { $wait ->
        [primer] Primer dries
        [sealant] Sealant cures
        [recoat] Paint dries
        [acclimation] Boards acclimate to the room
       *[season] Wait for the best weeks to seal
    }

option-task-unit =
    { $per ->
        [visit] { $count ->
            [one] visit
           *[other] visits
        }
        [section] { $count ->
            [one] section
           *[other] sections
        }
        [joint_run] { $units ->
            [inches] ft of joint
           *[millimeters] m of joint
        }
        [bead_run] { $units ->
            [inches] ft of joint
           *[millimeters] m of joint
        }
        [backed_run] { $units ->
            [inches] ft of backed joint
           *[millimeters] m of backed joint
        }
        [painted_area] { $units ->
            [inches] sq ft painted
           *[millimeters] m² painted
        }
        [coated_area] { $units ->
            [inches] sq ft painted, each coat
           *[millimeters] m² painted, each coat
        }
        [coated_grooves] { $units ->
            [inches] ft of groove, each coat
           *[millimeters] m of groove, each coat
        }
        [angled_end] { $count ->
            [one] end cut at an angle
           *[other] ends cut at an angle
        }
        [boarded_area] { $units ->
            [inches] sq ft of boards
           *[millimeters] m² of boards
        }
        [board] { $count ->
            [one] board
           *[other] boards
        }
        [opening] { $count ->
            [one] opening
           *[other] openings
        }
        [window] { $count ->
            [one] window or door
           *[other] windows and doors
        }
        [fixture] { $count ->
            [one] light or vent
           *[other] lights and vents
        }
        [coat] { $count ->
            [one] coat
           *[other] coats
        }
        [day] { $count ->
            [one] day on site
           *[other] days on site
        }
        [person_day] { $count ->
            [one] person-day
           *[other] person-days
        }
        [evening] { $count ->
            [one] evening
           *[other] evenings
        }
        [standby] { $count ->
            [one] hour
           *[other] hours
        }
        [trim_run] { $units ->
            [inches] ft of trim
           *[millimeters] m of trim
        }
        [board_run] { $units ->
            [inches] ft of board
           *[millimeters] m of board
        }
       *[outline_run] { $units ->
            [inches] ft around the surfaces
           *[millimeters] m around the surfaces
        }
    }
option-material-unit =
    { $per ->
        [job] { $count ->
            [one] job
           *[other] jobs
        }
        [visit] { $count ->
            [one] visit
           *[other] visits
        }
        [painted_area] { $units ->
            [inches] sq ft painted
           *[millimeters] m² painted
        }
        [covered_area] { $units ->
            [inches] sq ft covered
           *[millimeters] m² covered
        }
        [boarded_area] { $units ->
            [inches] sq ft of boards
           *[millimeters] m² of boards
        }
        [outline_run] { $units ->
            [inches] ft around the surfaces
           *[millimeters] m around the surfaces
        }
        [board_run] { $units ->
            [inches] ft of board
           *[millimeters] m of board
        }
        [board_volume] { $units ->
            [inches] cu ft of old board
           *[millimeters] m³ of old board
        }
        [section] { $count ->
            [one] section
           *[other] sections
        }
        [joint_run] { $units ->
            [inches] ft of joint
           *[millimeters] m of joint
        }
        [bead_run] { $units ->
            [inches] ft of joint
           *[millimeters] m of joint
        }
        [board] { $count ->
            [one] board
           *[other] boards
        }
        [week] { $count ->
            [one] week
           *[other] weeks
        }
       *[backed_run] { $units ->
            [inches] ft of backed joint
           *[millimeters] m of backed joint
        }
    }
option-material-can = { $name }, { $size } can
option-material-board = { $name }, { $length } long
option-material-load = { $name }, per { $size }
option-material-run = { $name }, per { $length }
option-material-strip = { $name }, { $thick } × { $wide }, per { $length }

option-offer-own = Your own price.
option-offer-source = { $source } ({ label-source-kind }).
option-offer-class = { $source }.
option-offer-date = Price of { $date }.
option-offer-no-date = Price not dated.
