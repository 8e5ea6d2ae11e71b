### Before the next install: what boards must be, and how to check a delivery.

install-heading = Before the next install
install-moisture = Dry boards to
    .hint = The moisture these boards settle at in this room, on average over the year
install-allowed = Allowed
    .hint = Wetter boards open past your callback gap in the driest weeks. Drier ones need more than { $room } of room to swell in the most humid weeks.
install-allowed-range = { $low } to { $high }
install-allowed-none = no moisture works: boards this wide move too much for this room
install-gap = Gap to leave
    .hint = How much boards at that moisture swell in the most humid weeks
install-widest = Widest board
    .hint = Its joint, { $joint } wide and sealed at the year’s average, stays within the sealant’s class all year
install-widest-value = { $width } with { $sealant }
install-check = Boards to meter
    .hint = How many boards to meter, and the risk of rejecting a good load or accepting a bad one. A good load has { $good } of its boards out of limits; a bad one has { $bad }.
install-check-value =
    { $may_fail ->
        [0] { $boards ->
            [one] 1 board. Accept the load if it is within limits (risk { $turned_away } and { $let_in })
           *[other] { $boards } boards. Accept the load if none is out of limits (risk { $turned_away } and { $let_in })
        }
        [one] { $boards } boards. Accept the load if at most 1 is out of limits (risk { $turned_away } and { $let_in })
       *[other] { $boards } boards. Accept the load if at most { $may_fail } are out of limits (risk { $turned_away } and { $let_in })
    }
install-acclimation =
    { $days ->
        [0] Ready now
        [one] 1 day on stickers in the room
       *[other] { $days } days on stickers in the room
    }
install-acclimation-never = This room won’t get the boards there within a year
install-remark = Days are counted from the visit, for unpainted boards with both faces open to the room, until they are in the allowed range. Meter them before you install them: the days are a guide; the meter decides.
