### Tables of readings that the command line takes, and making a job from them.

reading-table-line = { $file }, line { $line }: { $what }
reading-table-no-column = the headings have no column “{ $column }”. Add one, or rename yours.
reading-table-empty = nothing stands under “{ $column }”.
reading-table-entry = “{ $column }”: { $what }
reading-table-choice = “{ $column }”: “{ $text }” isn’t one of { $choices }.
reading-table-form = it can’t be read: { $reason }.

new-job-exists = There is a file “{ $path }” already. Choose another name, or add --force.
new-job-size = “{ $text }” isn’t two sides. Write them like "18' x 9' 6\"" or "5.4 m x 2.9 m".
new-job-side = { $side } is no side of a room: it must be from { $low } to { $high }.
new-job-entry = --{ $option }: { $what }
new-job-units = “{ $text }” isn’t one of inches, mm.
new-job-kind = “{ $text }” isn’t one of ceiling, slope, wall.
new-job-pattern = “{ $text }” isn’t one of { $patterns }.
new-job-species = “{ $text }” isn’t a species of the catalog. Did you mean one of { $near }?
new-job-species-sold = “{ $text }” is a trade name. The species sold as that is { $near }: type it so.
new-job-species-several = “{ $text }” is a trade name for several species. The grade stamp or the supplier says which. Type one of { $near }.
new-job-species-none = “{ $text }” isn’t a species of the catalog.
new-job-place = --place: { $lead } { $places }
new-job-place-several = There is more than one. Add the state, or use a ZIP code:
new-job-right-wall = --right is for a wall whose top edge slopes.
new-job-faults = { $count ->
    [one] 1 fault: no job was written.
   *[other] { $count } faults: no job was written.
}
