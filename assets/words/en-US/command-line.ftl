### The command line: help texts and what it prints.

command-line = Why painted, caulked board joints opened, how they will move, and which repair lasts.
command-line-gapwright =
    .job = Job to open in the window; a page to start from if none is named
command-line-assess = Print the answer
    .job = Job file, or a folder of them for a table with one line per job
    .json = Print the whole assessment as JSON
command-line-bead = Work out how far one bead of sealant is stretched, and how much of each class that uses
    .gap = Width of the gap when sealed, such as 3/32in or 2.4mm; a bare number is inches
    .v = Width of the bevel on each board’s face; 0 for square edges
    .angle = Slope of the bevel from the face, in degrees
    .fill = How much of the V’s depth is filled, in percent
    .depth = How far the bead reaches into the gap below the V
    .hollow = How hollow the face is tooled, in percent of its width
    .solids = Solids of the sealant, in percent by volume
    .behind = What is behind the bead: nothing, the bonded tongue, bond-breaker tape, or backer rod
    .open = How far the joint opens
    .close = How far the joint closes
    .slide = How far the boards slide along each other
    .lift = How far one board’s face rises above the other’s
    .json = Print JSON
command-line-new = Make a job from sizes and a pattern or an outline file, with readings from tables
    .job = Job file to write, .ron or .json
    .size = Two sides of the surface, such as "18' x 9' 6\""; a bare number is feet, or millimeters
    .outline = Outlines as DXF, SVG, or CSV corners instead of a size
    .surface = Name of the surface
    .kind = ceiling, slope, or wall
    .pattern = straight, diagonal, quarters, quarters-at-dividers, chevron, or upright
    .right = Height of a wall at its right end, if its top edge slopes
    .units = inches or mm: the units of the job and of bare numbers
    .face = Face width of the boards
    .overall = Overall width of the boards, tongue included
    .thickness = Thickness of the boards
    .species = Species, such as pine-eastern-white
    .gaps = Gap readings as CSV (joint, gap; surface, bead, date, at) or JSON
    .meter = Meter readings as CSV (section, moisture; surface, board, wood_temperature, setting, date) or JSON
    .place = Town, ZIP code, or coordinates, for the climate
    .visited = Day of the visit; today if it isn’t given
    .installed = Day or month the boards were installed
    .built = Year the house was built
    .title = Job name
    .owner = Homeowner
    .address = Address
    .force = Write over a file that is there
command-line-check = List the problems of a job
    .job = Job file, or a folder of them
command-line-joints = Print every joint: length, gap, movement, stretch of the bead
    .job = Job file
    .csv = As CSV, the only format
command-line-year = Print the coming year day by day: air, moisture, gaps
    .job = Job file
    .csv = As CSV, the only format
command-line-export = Write everything for other programs: JSON, CSV, SVG, PNG, DXF
    .job = Job file
    .out = Folder to write to; created if missing
command-line-ready = Show whether a delivery of boards is ready to hang
    .job = Job file
    .json = Print JSON
    .out = Write the record, the crew card, JSON and a calendar entry to this folder
    .owner_language = Language of the homeowner’s papers and page, such as es-US; US English if not given
    .crew_language = Language of the crew’s papers, such as es-US; US English if not given
command-line-no-install = The job has no next install. Make one in the window’s Next install room.
command-line-rates = Learn rates from the finished jobs in a folder
    .folder = Folder of job files
    .prices = Write a price file with these rates here
command-line-papers = Write the papers as PDF, the homeowner’s page, and a calendar
    .job = Job file, or a folder of them for one folder of papers per job
    .draft = Write papers that can’t be stood for as well; each page then says that it is a draft
    .keep = Keep what the papers tell in the job’s file, so that later visits are compared with it; the file is written anew, without comments
    .out = Folder to write them to; created if missing
    .templates = Folder with your own templates; papers without one use the built-in template
    .owner_language = Language of the homeowner’s papers and page, such as es-US; US English if not given
    .crew_language = Language of the crew’s papers, such as es-US; US English if not given
command-line-schema = Print the JSON Schema of “assess --json”
    .job = Print the schema of job files instead
command-line-templates = Write the built-in paper templates, so you can change them
    .out = Folder to write them to; templates already there are left as they are

command-line-no-window = the window can’t be opened: { $error }
command-line-no-display = there is no display to open a window on; here is the answer in words
command-line-no-language = there is no language “{ $tag }”; there are { $known }
command-line-no-problems = No problems found.
command-line-file = { $name }:
command-line-progress = { $all ->
    [one] { $count } of 1 job
   *[other] { $count } of { $all } jobs
}
command-line-finished = { $all ->
    [one] { $finished ->
        [0] The job has no actual hours.
       *[other] The job has actual hours.
    }
   *[other] { $finished ->
        [one] 1 of { $all } jobs has actual hours.
       *[other] { $finished } of { $all } jobs have actual hours.
    }
}
command-line-waste = { $material }: { $waste } waste (catalog { $start }, { $jobs ->
    [one] 1 job
   *[other] { $jobs } jobs
})
command-line-rate = { $task }: { $minutes } min per batch (catalog { $start }, { $jobs ->
    [one] 1 job
   *[other] { $jobs } jobs
}, weight { $weight })
command-line-nothing-kept = Nothing was kept in the job: there is no repair to promise yet, the work is already done or checked, or part of the file couldn’t be read.
