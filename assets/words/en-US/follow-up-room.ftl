### The Follow-up room: what the work took, and later visits.

work-heading = Finished work
work-hours = Hours
work-pieces = Pieces used
work-remark = Hours from finished jobs become your own rates: under Catalog, choose “Learn from finished jobs…” and the folder they are in.
work-column-task = task
work-column-estimated-hours = estimated hours
work-column-actual-hours = actual hours
work-column-material = material
work-column-estimated-pieces = estimated
work-column-used-pieces = used
work-hours-of = Actual hours: { $task }
work-pieces-of = Pieces used: { $material }
work-over =
    { $sign ->
        [more] +{ $share }
       *[less] -{ $share }
    }

visits-heading = Later visits
visits-remark = Measure some of the same joints again, before the work or after it. The forecast is shown beside each one, and readings taken before the work update the odds of the causes.
visit-add = Add visit
visit-on = Visit on
visit-day = Date of visit { $number }
visit-remove = Remove visit { $number }
undo-remove-visit = Remove visit
visit-measure-again = Measure again
visit-joint-again = Joint to measure again
visit-measure-all = All
    .hint = Every joint of the first visit
undo-measure-all-again = Measure all joints again
visit-column-joint = joint
visit-column-gap = gap
visit-column-opening = opening
visit-column-forecast = forecast
visit-column-chance = chance it opens
visit-gap = Gap later: { $surface } { $joint }
visit-forecast = { $expected } ({ $low } to { $high })
    .hint = Nine readings in ten should fall in this range
visit-inside = in range
visit-outside = out of range
undo-promise = Keep what the papers said
visits-told = Compared with the papers of { $on }.
visits-not-told = Compared with what the first visit alone would have forecast: no papers were written before these visits.
