### Questions, messages and what the window tells.

cancel = Cancel
dismiss = Dismiss

lost-title = Unsaved work found
lost-text = Gapwright didn’t close properly last time. What you typed is still here:
lost-recover = Recover
lost-holds = { $surfaces ->
    [one] 1 surface
   *[other] { $surfaces } surfaces
}, { $gaps ->
    [one] 1 gap
   *[other] { $gaps } gaps
}
lost-holds-install = { $readings ->
    [one] Next install, 1 board metered
   *[other] Next install, { $readings } boards metered
}
lost-delete = Delete…
lost-delete-now = Delete for good
lost-later = Ask again next time

changed-title = The file has changed
changed-text = Someone else changed “{ $path }” since you opened it here.
changed-overwrite = Save over it
changed-open-theirs = Open theirs

unsaved-title = Save your changes?
unsaved-text = This job has unsaved changes.
unsaved-discard = Don’t save

file-partly-read = Parts of “{ $path }” couldn’t be read; they are listed under Measure. The file stays as it is: save under another name.
file-was-typing = You were typing “{ $text }” into “{ $field }”. It is not in the job yet.
file-open-twice = “{ $path }” is open in another window too. The last one saved wins: save under another name to keep both.
file-changed = Someone else changed “{ $path }” since you opened it here. Open it again to see their job, or save yours under another name.
file-saved = Saved to { $path }
autosave-failed = Unsaved work can’t be backed up right now. Save the job soon.

copied-lines = { $count ->
    [one] 1 line copied
   *[other] { $count } lines copied
}
copied-picture = Picture copied, { $width } by { $height } pixels
copy-no-surface = There is no surface to copy yet. Add one under Measure.

prices-exported = Prices saved to { $path }
prices-no-place = There is no folder for your own prices on this computer. Export them to a file instead.
prices-kept = New jobs will start with these prices
prices-from-program = the program
undo-keep-prices = Keep prices with the job
photo-save-first = Save the job first: its photos are kept in a folder beside it.
undo-pin-photo = Pin photo
undo-recover = Recover unsaved work

task-read-file = Reading { $name }…
task-write-papers = Writing the papers…
task-read-jobs = Reading the jobs in { $name }…
papers-written = The papers are in { $path }.
