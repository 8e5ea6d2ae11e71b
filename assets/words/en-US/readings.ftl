### Gap and meter readings in the Measure room.

gaps-none = Click a joint on the drawing and type its gap. Enter takes you to the next one worth measuring. A closed joint counts too: type 0.
gaps-count = { $count ->
    [one] 1 gap measured, { $open } open. Click joints on the drawing to add more.
   *[other] { $count } gaps measured, { $open } open. Click joints on the drawing to add more.
}
gaps-column-joint = joint
gaps-column-gap = gap
gaps-column-caulk = caulk
gaps-column-date = other day
gaps-show = Show this joint
gap-reading = Gap reading { $number }
gap-reading-date = Date of gap reading { $number }
gap-reading-remove = Remove gap reading { $number }
undo-remove-gap = Remove gap

meter-column-section = section
meter-column-board = board
meter-column-reading = meter %
meter-column-setting = meter set to
meter-add = Add meter reading
meter-reading = Meter reading { $number }
meter-reading-section = Section of meter reading { $number }
meter-reading-board = Board of meter reading { $number }
meter-reading-temperature = Wood temperature { $number }
meter-reading-setting = Setting of meter reading { $number }
meter-reading-remove = Remove meter reading { $number }
undo-remove-meter-reading = Remove meter reading
# A link under a gap that is too wide to be one.
gap-meant = Joint { $joint }: { $typed } is very wide. Did you mean { $meant }?
gap-is = It’s { $width }
