### Surfaces with their boards, sections, outlines and trim breaks, in the Measure room.

boards-begin = Start here: the size of the ceiling or wall, and how its boards run.
boards-add-another = Add another surface
boards-summary = { $boards ->
    [one] 1 board
   *[other] { $boards } boards
}, { $run } of joints, { $area }
boards-pattern-of = Pattern
boards-relay-as = Re-lay as…
boards-relay = Re-lay the boards
boards-relaid = { $count ->
    [one] The boards run another way now. 1 gap reading went to the joint of the same name: check it. Undo brings the old boards back.
   *[other] The boards run another way now. { $count } gap readings went to joints of the same name: check them. Undo brings the old boards back.
}
boards-remove-surface = Remove surface
boards-removed = { $count ->
    [one] The surface is gone. Its gap reading stays in the list and doesn’t count. Undo brings the surface back.
   *[other] The surface is gone. Its { $count } gap readings stay in the list and don’t count. Undo brings the surface back.
}
boards-title = Boards
boards-size = Size
    .hint = The size by name. It sets the face width, overall width, and thickness; correct any of them if your boards differ.
boards-size-other = other
boards-of-all = Boards in all sections
boards-different-here = Different boards here
boards-sections = Sections
boards-outline = Outline, trim, windows, and doors
boards-dividers = Trim breaks and ridge board

## A surface to be added

new-surface-kind = Type of the new surface
new-surface-width = Width
new-surface-depth = Depth
new-surface-wall-length = Length
new-surface-wall-height = Height
new-surface-right = Height at the right
    .hint = Only for a wall with a raking top edge. Leave empty otherwise.
new-surface-width-entry = Width of the new surface
new-surface-height-entry = Height of the new surface
new-surface-right-entry = Height of the new surface at the right
new-surface-pattern = Pattern of the new surface
new-surface-outlines = Adds a surface for each closed outline in a DXF, SVG, or CSV file
new-surface-add = Add surface

## What surfaces and boards are

boards-surface-kind =
    { $kind ->
        [ceiling] Ceiling
        [slope] Sloped ceiling
       *[wall] Wall
    }
boards-pattern =
    { $pattern ->
        [straight] Straight run
        [diagonal] Diagonal
        [quarters] Quarters on the diagonals
        [quarters_at_dividers] Quarters with crossing trim
        [chevron] Chevron
       *[upright] Vertical (wainscot)
    }
boards-profile =
    { $profile ->
        [v_groove] V-groove
        [bead] bead
       *[square] square
    }
boards-nailing =
    { $place ->
        [tongue] tongue (blind-nailed)
        [middle] middle of the face
        [groove] groove
       *[both_edges] both edges
    }
boards-backing =
    { $backing ->
        [cavity] air (furring, joists, attic)
       *[tight] tight to drywall or plaster
    }
boards-divider-kind =
    { $kind ->
        [ridge] ridge board
       *[dividing] flat board
    }
boards-species-movement = { $species } changes { $share } in width for each 1% change in moisture content.

## Sections

boards-section = Section { $name }
boards-add-section = Add section
boards-remove-section = Remove section

## Outlines

boards-edge = edge { $number }
boards-add-opening = Add window or door
boards-remove-opening = Remove { $name }
undo-remove-opening = Remove window or door

corners-column-corner = corner
corners-column-right = right
corners-column-up = up
corners-right =
    { $ring ->
        [outline] Outline, corner { $number }, right
        [section] Section { $name }, corner { $number }, right
       *[opening] { $name }, corner { $number }, right
    }
corners-up =
    { $ring ->
        [outline] Outline, corner { $number }, up
        [section] Section { $name }, corner { $number }, up
       *[opening] { $name }, corner { $number }, up
    }
corners-add =
    { $ring ->
        [outline] Add corner to outline
        [section] Add corner to section { $name }
       *[opening] Add corner to { $name }
    }
corners-remove =
    { $ring ->
        [outline] Remove corner { $number } of outline
        [section] Remove corner { $number } of section { $name }
       *[opening] Remove corner { $number } of { $name }
    }

## Trim breaks

boards-add-divider = Add trim break
boards-remove-divider = Remove { $name }
undo-remove-divider = Remove trim break
boards-divider-end =
    { $end ->
        [from] From
       *[to] To
    }
boards-divider-end-right =
    { $end ->
        [from] From, right
       *[to] To, right
    }
boards-divider-end-up =
    { $end ->
        [from] From, up
       *[to] To, up
    }
