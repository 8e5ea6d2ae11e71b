### Why the joints opened: the causes, their chances, the clues.

cause-label =
    { $cause ->
        [wet_at_install] Boards too wet at install
        [seasonal] Ordinary seasonal movement
        [weak_sealant] Sealant failed below its rating
        [framing_moved] Framing or fastening moved
        [wetted_and_dried] Boards that got wet
       *[bonded_groups] Boards stuck together in groups
    }
cause-explained =
    { $cause ->
        [wet_at_install] The boards dried to match the room, and each one left a gap as wide as it shrank.
        [seasonal] Boards that were dry enough at install narrow in the dry months and widen again in the humid ones.
        [weak_sealant] Any good bead takes this much movement, but this one failed at small openings.
        [framing_moved] One joint is open far more than the ones beside it: the framing or the fastening behind it moved.
        [wetted_and_dried] Boards that get wet swell, crush each other’s edges, and leave wider gaps when they dry.
       *[bonded_groups] Paint or sealant holds boards together: the movement of several shows at one joint, and the rest stay shut.
    }

chance-percent =
    { $band ->
        [over] over { $percent }
        [under] under { $percent }
       *[plain] { $percent }
    }

cause-clue-mean-gap = { $several ->
    [yes] In section { $section } the average gap is { $mean }
   *[no] The average gap is { $mean }
}; boards that were dry enough at install would show { $dry } today.
cause-clue-pattern =
    { $closed ->
        [0] Of { $measured } joints measured between boards, none is closed; the widest gap is { $widest }.
        [one] Of { $measured } joints measured between boards, 1 is closed; the widest gap is { $widest }.
       *[other] Of { $measured } joints measured between boards, { $closed } are closed; the widest gap is { $widest }.
    }
cause-clue-moisture = { $several ->
    [yes] In section { $section }, corrected
   *[no] Corrected
} for the wood’s temperature, the meter readings come to { $now }, about where boards in this room would be.
cause-clue-moisture-differs = { $several ->
    [yes] In section { $section }, corrected
   *[no] Corrected
} for the wood’s temperature, the meter readings come to { $now }; boards in this room would be at { $room }.
cause-clue-room = The hygrometer read { $humidity } humidity in the room.
cause-clue-failures =
    { $failure ->
        [one_side] { $count ->
            [one] 1 bead lost adhesion on one side.
           *[other] { $count } beads lost adhesion on one side.
        }
        [split] { $count ->
            [one] 1 bead split in the middle.
           *[other] { $count } beads split in the middle.
        }
        [paint_torn] { $count ->
            [one] The paint tore over 1 bead.
           *[other] The paint tore over { $count } beads.
        }
        [squeezed_out] { $count ->
            [one] 1 bead was squeezed out.
           *[other] { $count } beads were squeezed out.
        }
       *[whole] { $count ->
            [one] 1 bead is intact.
           *[other] { $count } beads are intact.
        }
    }

cause-mark-driest =
    { $surely ->
        [yes] The boards were as dry as the { $meets } stamp promises.
       *[no] The boards were probably as dry as the { $meets } stamp promises.
    }
cause-mark-between =
    { $surely ->
        [yes] The boards were within what the { $meets } stamp allows, but wetter than { $misses }.
       *[no] The boards were within what the { $meets } stamp allows, but probably wetter than { $misses }.
    }
cause-mark-stamped =
    { $meets ->
        [yes] { $surely ->
            [yes] The boards were as dry as their { $mark } stamp promises.
           *[no] The boards were probably as dry as their { $mark } stamp promises.
        }
       *[no] { $surely ->
            [yes] The boards were wetter than their { $mark } stamp allows.
           *[no] The boards were probably wetter than their { $mark } stamp allows.
        }
    }
cause-mark-green =
    { $surely ->
        [yes] The boards were green lumber: wetter than { $misses } allows.
       *[no] The boards were probably green lumber: wetter than { $misses } allows.
    }
