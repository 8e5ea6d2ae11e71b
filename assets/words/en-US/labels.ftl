### Labels of what can be noted and of what figures rest on.

label-source-kind =
    { $kind ->
        [published] published
        [from_memory] published, not rechecked
        [common_practice] common practice, no source
       *[assumption] assumption
    }
label-coefficient-printed = { $source } ({ label-source-kind })
label-coefficient-worked-out = worked out from { $source } ({ label-source-kind })
label-failure =
    { $failure ->
        [not_noted] not noted
        [whole] intact
        [one_side] lost adhesion on one side
        [split] split in the middle
        [paint_torn] paint torn
       *[squeezed_out] squeezed out
    }
label-meter-setting =
    { $setting ->
        [this_species] this wood
        [other_species] another wood
       *[unknown] not known
    }
label-joint-kind =
    { $kind ->
        [board_edge] board to board
        [board_end] board end
        [divider] board to trim break
       *[perimeter] perimeter
    }
label-bead =
    { $state ->
        [pulled] Bead stretched: { $used } of what its class takes
        [squeezed] Bead squeezed: { $used } of what its class takes
        [tears_behind] Bead starts to tear at the back, out of sight: { $used } of what its class takes
        [crushed_behind] Bead overloaded at the back, out of sight: { $used } of what its class takes
        [torn] Bead torn: { $used } of what its class takes
       *[out] Bead squeezed out: { $used } of what its class takes
    }

# Names of joints that have words in them.
joint-end = { $joint } end { $number }
joint-side = { $section } side { $number }
joint-edge = { $section } edge
joint-between = { $section } to { $other }
