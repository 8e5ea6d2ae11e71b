### Outlines of rooms out of drawings and tables: what was taken, what was left out, and why a file could not be used.

outline-taken = { $count ->
    [one] Added 1 outline, measured in { $unit ->
        [mm] millimeters
        [cm] centimeters
        [m] meters
        [in] inches
       *[ft] feet
    }.
   *[other] Added { $count } outlines, measured in { $unit ->
        [mm] millimeters
        [cm] centimeters
        [m] meters
        [in] inches
       *[ft] feet
    }.
}
outline-unit-assumed = The file does not name its unit, so check one length.

## Why a file could not be used

outline-kind = “{ $name }” is not a kind of file that can be read. Choose a .dxf or .svg drawing, or a .csv table of corners.
outline-empty = The file is empty. Choose another, or save it again where it was made.
outline-too-large = The file is { $megabytes } MB; the limit is 20 MB. Save only the outlines of the rooms.
outline-not-text = { $kind ->
    [dwg] The file is a DWG drawing, which can’t be read. Save it as DXF.
    [binary-dxf] The file is a binary DXF, which can’t be read. Save it as an ASCII DXF.
    [compressed] The file is compressed. Unpack it, or save it as plain SVG, DXF, or CSV.
    [utf16] The file is in UTF-16, which can’t be read. Save it in UTF-8.
   *[binary] The file is not plain text. Save it as DXF, SVG, or CSV.
}
outline-too-many-corners = The file has more than { $limit } corners. Keep only the outlines of the rooms in it.
outline-too-many-outlines = The file has more than { $limit } outlines. Keep only those of the rooms in it.
outline-none = There is no closed outline in the file. Draw each room as one closed line.
outline-broken = { $format ->
    [csv] The table can’t be read: { $reason }. Save it again as CSV.
    [dxf] The drawing can’t be read: { $reason }. Save it again as an ASCII DXF, or give the corners as a .csv table.
   *[svg] The drawing can’t be read: { $reason }. Save it again as plain SVG, or give the corners as a .csv table.
}
outline-broken-line = { $format ->
    [csv] The table can’t be read at line { $line }: { $reason }. Save it again as CSV.
    [dxf] The drawing can’t be read at line { $line }: { $reason }. Save it again as an ASCII DXF, or give the corners as a .csv table.
   *[svg] The drawing can’t be read at line { $line }: { $reason }. Save it again as plain SVG, or give the corners as a .csv table.
}
outline-no-drawing = There is no SVG drawing in the file. Save it again as plain SVG, or give the corners as a .csv table.
outline-truncated = The drawing stops in the middle. Save it again as plain SVG, or give the corners as a .csv table.
outline-too-many-groups = The drawing has more than { $limit } groups. Keep only the outlines of the rooms in it.
outline-too-deep = The drawing has groups inside groups more than { $limit } deep. Ungroup them, and save it again as plain SVG.

## One line that is wrong

outline-row-too-long = Line { $line } is too long for a row: “{ $found }”. Put one corner on each row.
outline-columns = Line { $line } has neither the two columns x, y nor the three columns outline, x, y: “{ $found }”. If you use decimal commas, put semicolons between the columns.
outline-same-columns = Line { $line } has different columns from the first row: “{ $found }”. Give every row the same columns.
outline-one-unit = Line { $line } gives x and y different units: “{ $found }”. Use one unit for both.
outline-coordinate = Line { $line }: “{ $found }” is not a coordinate. Type digits only, like 3200 or 12.5, without a unit.
outline-number-too-large = Line { $line }: “{ $found }” is too large. Draw with numbers below 1,000,000,000.
outline-code = Line { $line }: “{ $found }” is not a group code, which every other line of a DXF must be. Save it again as an ASCII DXF.
outline-length-or-angle = Line { $line }: “{ $found }” is not a length or an angle. Save the drawing again as an ASCII DXF.
outline-whole = Line { $line }: “{ $found }” is not a whole number. Save the drawing again as an ASCII DXF.

## Writing

outline-shape-corners = A shape on layer “{ $layer }” can’t be written because an outline needs three corners or more. Leave it out, or fix it first.
outline-shape-measurable = A shape on layer “{ $layer }” can’t be written because a corner is too far away. Leave it out, or fix it first.
outline-unwritten = The drawing can’t be written: { $reason }. Nothing was saved.

## What was taken for granted or left out

outline-unknown-unit = { $unit ->
    [mm] The drawing’s unit can’t be read, so its lengths were read as millimeters. Check one length.
    [cm] The drawing’s unit can’t be read, so its lengths were read as centimeters. Check one length.
    [m] The drawing’s unit can’t be read, so its lengths were read as meters. Check one length.
    [in] The drawing’s unit can’t be read, so its lengths were read as inches. Check one length.
   *[ft] The drawing’s unit can’t be read, so its lengths were read as feet. Check one length.
}
outline-no-size = The drawing has no size in mm, cm, or in with a viewBox, so 96 of its units were read as one inch. Check one length.

outline-left-open-lines = { $count ->
    [one] 1 open line was left out. An outline must close.
   *[other] { $count } open lines were left out. An outline must close.
}
outline-left-branched-lines = { $count ->
    [one] 1 line was left out because more than two meet at a corner. Draw each room as one closed polyline.
   *[other] { $count } lines were left out because more than two meet at a corner. Draw each room as one closed polyline.
}
outline-left-small-shapes = { $count ->
    [one] 1 shape was left out because it is too small or has fewer than three corners.
   *[other] { $count } shapes were left out because they are too small or have fewer than three corners.
}
outline-left-far-shapes = { $count ->
    [one] 1 shape was left out because it lies too far from the origin of the drawing. Move it closer.
   *[other] { $count } shapes were left out because they lie too far from the origin of the drawing. Move them closer.
}
outline-left-blocks = { $count ->
    [one] 1 block was left out. Explode blocks first.
   *[other] { $count } blocks were left out. Explode blocks first.
}
outline-left-curves = { $count ->
    [one] 1 spline or ellipse was left out. Turn curves into polylines.
   *[other] { $count } splines or ellipses were left out. Turn curves into polylines.
}
outline-left-texts = { $count ->
    [one] 1 text or dimension was left out.
   *[other] { $count } texts or dimensions were left out.
}
outline-left-hatchings = { $count ->
    [one] 1 hatch was left out. Draw the line around it.
   *[other] { $count } hatches were left out. Draw the lines around them.
}
outline-left-faces = { $count ->
    [one] 1 solid or face was left out. Draw the line around it.
   *[other] { $count } solids or faces were left out. Draw the lines around them.
}
outline-left-meshes = { $count ->
    [one] 1 mesh was left out. Draw the line around it.
   *[other] { $count } meshes were left out. Draw the lines around them.
}
outline-left-on-sheet = { $count ->
    [one] 1 shape was left out because it is on the layout sheet, not in the drawing.
   *[other] { $count } shapes were left out because they are on the layout sheet, not in the drawing.
}
outline-left-upright = { $count ->
    [one] 1 shape was left out because it does not lie flat.
   *[other] { $count } shapes were left out because they do not lie flat.
}
outline-left-others = { $count ->
    [one] 1 other object was left out. Only lines, arcs, circles, and polylines are read.
   *[other] { $count } other objects were left out. Only lines, arcs, circles, and polylines are read.
}
outline-left-sizeless = { $count ->
    [one] 1 shape was left out because it has no size.
   *[other] { $count } shapes were left out because they have no size.
}
outline-left-hidden = { $count ->
    [one] 1 hidden shape or group was left out. Turn it on to read it.
   *[other] { $count } hidden shapes or groups were left out. Turn them on to read them.
}
outline-left-copies = { $count ->
    [one] 1 clone was left out. Unlink clones first.
   *[other] { $count } clones were left out. Unlink clones first.
}
outline-left-texts-and-pictures = { $count ->
    [one] 1 text or picture was left out.
   *[other] { $count } texts or pictures were left out.
}
