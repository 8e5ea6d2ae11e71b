### Headings and the job's names in the Measure room.

measure-gaps = Gaps
measure-moisture = Moisture of the boards
measure-room = Room
measure-job = Job

job-more = Company address, logo, and notes
job-logo = Logo
    .hint = Goes at the top of the papers. PNG, JPEG, or SVG.
job-logo-choose = Choose a logo…
job-logo-another = Change the logo…
job-logo-remove = Remove the logo
