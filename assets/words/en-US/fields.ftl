### Labels of everything that is entered into a job, with hints where one helps.
### Units stand after an entry, not in its label.

## The job

field-title = Job name
field-owner = Homeowner
field-address = Address
field-firm = Company
field-firm-details = Address and phone
    .hint = As it should appear on the letter
field-firm-signs = Signed by
field-logo = Logo
    .hint = Goes at the top of the papers. PNG, JPEG, or SVG.
field-wording = Letter wording
    .hint = One line for each sentence or point. Figures you type over no longer follow the job.
field-notes = Notes
    .hint = For yourself. They aren’t printed on any paper.
field-units = Units
field-year-built = Year built
    .hint = Decides which safety notes apply. Leave empty if unknown.
field-installed = Boards installed
    .hint = The day the boards were installed. The timeline starts here.
field-visited = Visit date
    .hint = The day you measured the gaps and the moisture

## Surfaces

field-surface-name = Surface name
field-surface-kind = Type
field-outline = Outline
    .hint = Where lengths are in inches, a bare number here is feet. Type 9" for inches.
field-trim = Perimeter trim
    .hint = Width of the trim around the edge. 0 for none.
field-opening-name = Window or door name
field-opening = Window or door
    .hint = Corners of a window, door, or skylight, in order
field-divider-name = Trim break name
field-divider-kind = Trim break type
field-divider = Trim break
    .hint = The two ends of a board that breaks up the surface
field-divider-width = Trim break width
field-section-name = Section name
field-region = Section corners
field-photos = Photos
    .hint = Pinned where they were taken
field-north = North
    .hint = Where north is on the drawing: 0° is right, 90° is up. Leave empty if it doesn’t matter.
field-window-walls = Walls with windows
    .hint = Boards near windows dry and warm the most

## Boards

field-species = Species
    .hint = Sets how much the wood moves
field-thickness = Thickness
field-overall-width = Overall width
    .hint = Face width plus the tongue. A gap near the tongue’s length is past caulking.
field-face-width = Face width
    .hint = The width that shows, without the tongue
field-profile = Edge profile
    .hint = A V where two bevels meet, a bead, or square
field-profile-size = Profile size
    .hint = Width of one bevel, or of the bead
field-grain = Grain
    .hint = Angle of the growth rings to the face: 0° is flat-sawn and moves most, 90° is quarter-sawn. Mixed boards are about 25°.
field-nailing = Nailing
    .hint = Where each board is nailed decides which joint shows its movement
field-finish = Paint
    .hint = How much moisture gets through it
field-backing = Backing
    .hint = Air lets the backs dry too. Drywall or plaster tight behind the boards doesn’t.
field-max-length = Max length
    .hint = Longer runs have butt joints. Leave empty if every run is one board.
field-direction = Direction
    .hint = The way the boards run: 0° is to the right, 90° is up
field-starter-rip = Starter rip
    .hint = Width of the ripped first board. 0 to start with a full board.

## Readings

field-precision = Precision wanted
    .hint = How closely you want to know the total opening. Sets how many gaps to measure.
field-gap-joint = Joint
field-gap-width = Gap
    .hint = 0 for a closed joint. That is a reading too.
field-gap-date = Gap date
    .hint = Only if not on the day of the visit
field-gap-failure = Caulk failure
    .hint = How the caulk failed at this joint
field-meter-section = Section
field-meter-board = Board
    .hint = Which board, so you can find it again
field-meter-reading = Meter reading
    .hint = What the moisture meter shows
field-meter-setting = Meter setting
    .hint = The species the meter is set to
field-wood-temperature = Wood temperature
    .hint = Meters read high in warm wood and low in cold wood
field-meter-date = Reading date
    .hint = Only if not on the day of the visit
field-room-temperature = Room temperature
field-room-humidity = Room humidity
field-room-date = Room reading date
    .hint = Only if not on the day of the visit

## The room

field-air-source = Room air from
    .hint = The local climate and the house, a weather file, or twelve months typed in
field-place = Town, ZIP code, or coordinates
    .hint = The climate comes from the weather stations around it
field-elevation = Elevation
    .hint = Only if it is well above or below the towns around it. A bare number is feet where lengths are in inches.
field-weather-file = Weather file
    .hint = A year of hourly weather: EPW or TMY3
field-heat-setpoint = Heat setpoint
field-ac-setpoint = AC setpoint
field-humidity-by = Humidity set by
    .hint = The house’s own moisture load and setpoints, or a humidity class of EN 15026
field-moisture-load = Moisture load
    .hint = Water that people, plants, cooking, and washing add to the air in winter. { $units ->
        [inches] 0.9 to 1.8 gr/cu ft is usual, 2.6 is a damp house
       *[millimeters] 2 to 4 g/m³ is usual, 6 is a damp house
    }. In summer, with windows open, none of it stays.
field-dehumidifier = Dehumidifier setpoint
    .hint = Kept by the AC or a dehumidifier. Leave empty if there is neither.
field-humidifier = Humidifier setpoint
    .hint = Leave empty if there is none
field-month-temperature = Monthly temperature
field-month-humidity = Monthly humidity
field-logger = Data logger
    .hint = Readings from this room, as CSV

## The repair

field-option = Repair option
field-sealant = Sealant
    .hint = Its class says how far the joint may open or close, in percent of its width when sealed
field-primer = Primer
field-paint = Topcoat
field-coats = Coats of paint
field-scope = Joints to seal
field-open-threshold = Counts as open at
    .hint = A joint at least this wide counts as open
field-min-sealable-gap = Smallest sealable gap
    .hint = A narrower gap gives sealant nothing to grip
field-sealing-date = Sealing date
    .hint = First day of sealing. Leave empty for the best weeks.
field-bead-depth = Bead depth in the slot
    .hint = The bead is as deep as the gap is wide, but at least this
field-v-fill = V fill
    .hint = Share of the V that sealant fills. The rest stays visible.
field-bead-in-slot = Bead below the V
    .hint = How far a bead across the V reaches into the slot. At 0 it stops at the bottom of the V and the slot stays empty.
field-bead-hollow = Tooled hollow
    .hint = How far the middle of the bead lies below its edges, as a share of its width. 0 is flush.
field-sealant-waste = Sealant waste
    .hint = Sealant lost in cartridges and tooling, on top of what goes into the joints
field-crew-size = Crew size
field-hours-per-day = Paid hours per day
    .hint = For each person, the drive included, lunch not
field-start-time = Start time
    .hint = When the crew arrives: 8:00 AM, or just 8
field-lunch = Lunch break
    .hint = Not paid
field-stay-late = Stays late by up to
    .hint = To finish, rather than come back another day
field-windows = Windows and doors
    .hint = To mask before spraying
field-fixtures = Lights and vents
    .hint = To take down or mask
field-evenings = Room in the evening
    .hint = Handing the room back takes time every day
field-lead-paint = Lead paint
    .hint = Before 1978, or where the year is unknown, lead-safe work is priced once more than 6 square feet of paint is disturbed
field-guns = Caulking guns
    .hint = Cartridges and sausages don’t fit the same gun
field-delivered-at = Moisture at delivery
    .hint = What the meter shows when new boards arrive
field-acclimation = Acclimation
    .hint = How long new boards sit in the room before they are installed
field-waste-factor = Waste factor
    .hint = Share of each new board lost to knots and other defects
field-stock-lengths = Stock lengths
    .hint = Lengths that boards are sold in, separated by semicolons
field-kerf = Kerf
    .hint = Width of the saw cut
field-end-trim = End trim
    .hint = Cut off every board before it is used, both ends together
field-two-visits = Two visits
    .hint = Open and prime the joints now; seal them in the best weeks
field-workdays = Workdays
field-access = Access
    .hint = Ladders and scaffolds slow down every task at the boards
field-old-caulk = Old caulk
    .hint = Hard caulk has to be cut twice; soft caulk smears
field-room-state = Room
    .hint = Furniture and tight access slow the work down
field-timed-section = Timed section
    .hint = Scrape one section against the clock. The rest of the job follows its pace.
field-timed-minutes = Timed minutes
    .hint = Minutes for one person
field-charge-timed = Charge for the timed section
    .hint = It is done, and it is part of the job
field-own-minutes = Your task times
    .hint = Leave empty for the catalog’s rate
field-warranty = Warranty
    .hint = Within these years a callback is on you
field-callback-share = Callback if this much opens
    .hint = The homeowner calls back when this share of the joint length is open
field-callback-gap = Callback at any gap over
    .hint = The homeowner calls back over one gap this wide
field-smallest-visible-gap = Smallest visible gap
    .hint = Nobody sees a narrower one

## Pricing

field-currency = Currency
field-charging = We charge
    .hint = One rate with everything in it, or the wage with burden, overhead, and profit on top
field-charge-out = Hourly rate
    .hint = What the homeowner pays for one person’s hour, everything included
field-material-markup = Markup on materials
    .hint = On materials and equipment, with an hourly rate
field-wage = Painter’s wage
    .hint = What a painter is paid for an hour. To enter what you charge, choose “one hourly rate”.
field-carpenter-wage = Carpenter’s wage
    .hint = What a carpenter is paid for an hour
field-labor-burden = Labor burden
    .hint = Taxes, insurance, and paid time off, on top of the wage
field-equipment = Equipment per day
    .hint = Sprayer, lights, platforms: rent or wear for a day
field-overhead = Overhead
    .hint = Office, vehicles, idle time: on labor, materials, and equipment
field-profit = Profit markup
    .hint = On cost. The margin, a share of the price, is smaller.
field-contingency = Contingency
    .hint = Added to the price so that the cost is covered with this chance. Leave empty for none.
field-add-callbacks = Callbacks
    .hint = Whether the price holds what callbacks in the warranty are expected to cost
field-minimum-charge = Minimum charge
    .hint = The least you come out for, before tax
field-tax = Sales tax
field-tax-on = Tax on
field-round-to = Round to
field-deposit = Deposit
    .hint = Share of the total due before work starts
field-discount-rate = Discount rate
    .hint = How much less a cost a year from now counts than the same cost today
field-contractor-share = Contractor pays
    .hint = The share of the price you cover, as a courtesy
field-supplier-share = Claimed from supplier
    .hint = The share of the price you ask the supplier for. Until the supplier agrees, it is a claim.
field-line-split = Line split
    .hint = Shares of a single line of the price
field-on-hand = On hand
    .hint = Pieces you already have; only the rest is bought
field-own-prices = Your prices
    .hint = Leave empty for the catalog’s price
field-book-boards = Boards in this job
field-book-sealants = Sealants in this job
field-book-paints = Paints in this job
field-book-materials = Materials in this job
field-book-tasks = Tasks in this job
field-book-methods = Your repair options
field-price-book = Prices in this job
    .hint = Kept with the job, so they never change on their own

## Follow-up

field-finished = Finished on
    .hint = Last day of the work. Later visits check the new beads.
field-actual-hours = Actual hours
field-pieces-used = Pieces used
field-work-notes = Work notes
field-visit-date = Date of later visit
field-later-joint = Joint at a later visit
field-later-gap = Gap at a later visit
    .hint = 0 for a closed joint. Leave empty until it is measured.

## The next install

field-next-species = Species
field-next-thickness = Thickness
field-next-overall-width = Overall width
    .hint = Over the tongue
field-next-face-width = Face width
    .hint = What shows once the boards are up
field-next-profile = Edge profile
field-next-profile-size = Profile size
    .hint = Leg of the V, or width of the bead
field-next-grain = Grain
    .hint = Angle of the growth rings to the face: 0 for flat-sawn, 90 for quarter-sawn. Mixed boards are about 25.
field-next-nailing = Nailing
field-next-finish = Paint
field-next-backing = Backing
field-next-length = Board length
field-next-count = Boards
    .hint = How many boards the delivery has
field-next-joints = Joints
    .hint = Whether the joints stay open as shadow lines or get caulked
field-next-finished = Finished
    .hint = Whether the boards are painted before or after they go up
field-next-chance = Chance asked for
    .hint = How sure you want to be that no joint opens past the owner’s limit and the boards don’t buckle. 95% is 19 times in 20.
field-next-gap = Gap to leave
    .hint = Leave empty to use the recommended gap
field-next-wanted = Hang by
    .hint = The day you want to hang the boards
field-supplier = Supplier
field-delivery-date = Delivered
    .hint = Leave empty if it’s the day of the visit
field-promised = Promised at most
    .hint = The most moisture that the grade stamp or the delivery note allows, such as 19% for S-DRY or 15% for KD 15
field-gate-setting = Meter set to
field-piling = Piled
field-stack-kept = Kept in
field-checked-by = Measured by
field-hung = Hung on
field-stack-board = Board
field-stack-reading = Reading
field-stack-wood = Wood temperature
field-pin-depth = Pin depth
    .hint = How deep the pins went in. A quarter of the board’s thickness reads its average.
field-stack-date = Date read
    .hint = Leave empty if it’s the day of the delivery
