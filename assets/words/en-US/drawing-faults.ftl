### What is wrong with a drawing, and what to do about it.

drawing-too-few-corners = The outline has { $corners ->
        [0] no corners
        [one] only 1 corner
       *[other] only { $corners } corners
    }.
    .fix = Give at least three corners, in order around the edge. Until then, it is left out.
drawing-no-area = The corners enclose no area.
    .fix = Move the corners apart. Until then, it is left out.
drawing-crosses-itself = The edge crosses itself.
    .fix = Put the corners in order around the edge. Until then, it is left out.
drawing-opening-outside = “{ $name }” lies outside the outline.
    .fix = Move it inside, or remove it. Until then, it cuts nothing out.
drawing-divider-outside = “{ $name }” covers none of the surface.
    .fix = Give it a width and two ends inside the outline.
drawing-divider-ends-inside = “{ $name }” ends inside section “{ $section }”.
    .fix = Drag its end to the edge or to another trim break. Until then, the boards run on past it.
drawing-bare = { $area } of the surface is in no section and has no boards.
    .fix = Move the corners of the sections next to it, or cut it out as a window or door.
drawing-two-joints-alike = Two joints would both be called “{ $label }”.
    .fix = Rename the section, trim break, window, or door that makes them alike. Give it letters, not a number.
drawing-nothing-to-board = Section “{ $section }” has no area to board.
    .fix = Draw it inside the outline, clear of trim, windows, and doors. Until then, it is not worked out.
drawing-too-many-boards = Section “{ $section }” would take more boards than can be drawn.
    .fix = Check the face width. Until then, the section is not worked out.
drawing-too-many-pieces = Boards no longer than { $longest } would be more than can be drawn.
    .fix = Type the length of the longest board you can buy, or leave it empty. Until then, every run is one board.
drawing-narrower-than-a-board = Section “{ $section }” is only { $width } wide, less than one board of { $face }.
    .fix = Check the face width and the direction. Until then, it gets one ripped board.
drawing-no-tongue = The overall width of { $overall } is less than the face width of { $face }.
    .fix = The overall width includes the tongue. Until then, the boards count as having no tongue.
drawing-overlap = Section “{ $section }” overlaps section “{ $other }”, and boards there are counted twice.
    .fix = Move a corner of one of them.
