### The drawing, the joint under it, photos.

drawing = Drawing
drawing-working = working…

# The page to start from, in place of a drawing.
start-heading = Where do you want to start?
start-callback = A callback
    .hint = The boards are up and the joints have opened. Give the size of the ceiling or wall, then type the gaps.
start-next-install = The next install
    .hint = Boards are on the way. Check them before they go up.
start-open = Open a job
    .hint = One that you saved
start-demo = Look at an example
    .hint = A tea room with a V-groove ceiling. People, prices, and readings are made up.

drawing-empty = Nothing is drawn here yet.
drawing-legend = { $date }: gaps drawn { $times } times actual width; dots are measured
drawing-windows = windows
drawing-north = N
drawing-joint-measured = Joint { $joint }, { $gap } measured
drawing-joint-estimated = Joint { $joint }, about { $gap }
drawing-joint-unknown = Joint { $joint }, no reading
drawing-joint-kind = { $kind ->
    [board_edge] Between boards, { $length } long
    [board_end] Board ends, { $length } long
    [divider] At a trim break, { $length } long
   *[perimeter] At the trim, { $length } long
}
drawing-joint-range = { $low } to { $high } over the coming years

photo-name = Photo { $number }
photo-name-note = Photo { $number }: { $note }
photo-note = Note
photo-note-field = Note on the photo
photo-unpin = Unpin
    .hint = The file stays in the job’s folder
photo-unsaved-job = Save the job first: photos are kept beside its file.
photo-unreadable = “{ $path }” can’t be shown. Pin it again, or choose another photo.
photo-loading = loading…
close = Close

corner-of-outline = Corner { $number } of the outline
corner-of-opening = Corner { $number } of { $name }
corner-of-section = Corner { $number } of section { $name }
corner-at = { $name }, { $right } right, { $up } up
divider-start = Start of { $name }
divider-end = End of { $name }
divider-new-name = trim break { $letter }
opening-new-name = window { $number }
edge-type-length = Edge { $number }, { $length }: click to type its length
edge-length = Length of edge { $number }
undo-move-corner = Move corner
undo-remove-corner = Remove corner
undo-add-corner = Add corner
undo-edge-length = Edge length
undo-draw-divider = Draw trim break
undo-draw-opening = Draw window or door

joint-bar-shape = Drag a corner. Click a length to type it. Double-click an edge to add a corner; Delete removes one.
joint-bar-divider = Drag from edge to edge. It splits the sections it crosses.
joint-bar-opening = Drag from corner to corner.
joint-bar-photo = Click where the photo was taken.
joint-bar-click = Click a joint to type its gap. Shift-drag selects several.
joint-bar-none = No joints yet.
joint-bar-joint = Joint { $joint }
joint-bar-joints = { $count } joints
joint-bar-joints-measured = { $count } joints, { $measured } already measured
joint-bar-gap = Gap
joint-bar-gap-field = Gap of the joint
joint-bar-gone = This joint is no longer in the layout.
undo-gap = Gap
undo-failure = How the caulk failed

section-view = Joint section
    .hint = A cut through the joint on the day shown, to scale
section-title = joint section
section-shape-bead = Shape the bead
    .hint = Show the bead close up. Drag the squares to change how full the V is, how far the bead goes in, and how hollow it is tooled.
section-whole = Whole joint
bead-handle = { $name }: { $figure }
section-name = Joint section: gap { $gap }, { $state }
section-before-sealing = before sealing
section-not-sealed = not sealed
section-first =
    { $state }. { $place ->
        [face] It would split first at the ring: in the middle of its face.
        [edge] It would let go first at the ring: at its edge, where you see it.
        [side] It would let go first at the ring: from the side of the board.
        [inside] It would tear first at the ring: in its middle.
       *[back] It would let go first at the ring: at its back, out of sight.
    }
section-paint-cracked = { $state }. The paint over it is cracked.
section-gap-named = { $gap } · { $name }
