### What the command line says besides the answer.

command-line-no-problems = No problems found.
command-line-progress = { $done } of { $all ->
    [one] 1 job
   *[other] { $all } jobs
}
command-line-finished-jobs = { $finished } of { $all ->
    [one] 1 job
   *[other] { $all } jobs
} { $finished ->
    [one] says
   *[other] say
} what the work took.
command-line-learned-rate = { $task }: { $minutes } a batch (catalog { $start }; { $jobs ->
    [one] 1 job
   *[other] { $jobs } jobs
}, weight { $weight })
command-line-no-window = The window can't be opened: { $reason }
command-line-no-display = There is no display to open a window on. Here is the answer in words:
