### Writing files for other programs.

export-folder-failed = Can’t make the folder “{ $path }”: { $reason }. Choose another folder.
export-file-failed = Can’t write “{ $path }”: { $reason }. Choose another folder.
export-table-failed = A table can’t be made: { $reason }.
export-json-failed = The JSON can’t be made: { $reason }.
export-picture-failed = A picture can’t be made: { $reason }.
export-drawing-failed = The drawing can’t be made: { $reason }.

# What a figure may be, in the schema of job files
schema-range = From { $low } to { $high }

# Calendar entries
calendar-seal = Best weeks to seal: { $title }
calendar-work = Work: { $title }
calendar-humid = Measure the joints again, humid season: { $title }
calendar-dry = Measure the joints again, dry season: { $title }
calendar-follow-up-told = Same joints, same spots. The follow-up card lists them with the forecast.
