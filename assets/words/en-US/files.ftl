### Why a job, a price file, a logo or another file could not be read or written.

# $cause is what kept the system from reading; $system is what the system itself says.
file-unreadable = { $cause ->
    [missing] “{ $path }” is not there. Check the name and the folder, or choose another file.
    [denied] You don’t have permission to read “{ $path }”. Change its permissions, or choose another file.
    [folder] “{ $path }” is a folder. Choose a file in it.
   *[other] “{ $path }” can’t be read. The system says: { $system }. Choose another file.
}
file-unwritable = { $cause ->
    [missing] “{ $path }” can’t be saved because its folder is not there. Save to another folder.
    [denied] You don’t have permission to write “{ $path }”. The old file is unchanged. Save to another folder.
    [folder] “{ $path }” is a folder. Save under another name.
    [full] “{ $path }” can’t be saved because the drive is full. The old file is unchanged. Free some space, or save to another folder.
    [read-only] “{ $path }” can’t be saved because the drive is read-only. The old file is unchanged. Save to another folder.
   *[other] “{ $path }” can’t be saved. The system says: { $system }. The old file is unchanged. Save to another folder.
}

file-too-large = “{ $path }” is { $megabytes } MB, too large for a job. Choose a job file (.ron).
file-not-text = “{ $path }” is not a text file. Choose a job file (.ron).
file-price-book = “{ $path }” is a price file, not a job. Import it under Catalog.
file-newer = “{ $path }” was written by a newer version of Gapwright (file version { $found }; this program reads up to version { $known }). It is unchanged. Open it with the newer version.
file-unserializable = The job can’t be written: { $reason }. The old file is unchanged.

file-not-a-price-book = “{ $path }” is not a price file: { $reason }. Choose a price file that was exported from Gapwright.
file-learned-rate = { $count ->
    [one] 1 finished job of your own
   *[other] { $count } finished jobs of your own
}

file-logo-kind = This file is not a PNG, JPEG, or SVG picture. Save the logo as one of those and choose it again.
file-logo-size = This logo would take { $kilobytes } kB in the job; the limit is { $limit } kB. Choose a simpler or smaller one.
file-logo-text = The logo in the job file is damaged. Choose the logo again.

file-photo-too-large = “{ $path }” is { $megabytes } MB; the limit for a photo is { $limit } MB. Choose a smaller one.
file-photo-pixels = “{ $path }” has too many pixels to open. Save a smaller copy and choose that.
file-photo-kind = “{ $path }” is not a picture that can be read. Choose a JPEG or PNG.
file-photos-too-many = There are too many photos in “{ $path }”. Remove some that are no longer used.
