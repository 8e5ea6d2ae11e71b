### The Papers room: previews, templates, the wording of the letter.

papers-write = Write papers…
papers-write-again = Write again
papers-drafts = Drafts too
    .hint = Writes papers that can’t be stood for as well. Each page then says that it is a draft, and why.
papers-proposal-terms = Proposal terms
papers-figures = Source of the figures
papers-figures-from = Every figure comes from the other tabs. Names, addresses, and the logo are under Measure, in Job.
papers-typesetting = Typesetting…
papers-page = { $paper }, page { $page } of { $pages }
papers-enlarge = Click to enlarge

papers-template-edit = Edit template…
    .hint = Puts a copy of the template next to your settings, for any text editor
papers-template-own = Your template
papers-template-reload = Reload
papers-template-built-in = Use built-in template
    .hint = Your template is kept, its name ending in .old
papers-template-made = The template is in { $path }. Edit it with any text editor; the notes at the top list what it can show.
papers-template-no-place = There is no folder for your own templates on this computer.
papers-template-kept = Your template is kept as { $path }.

wording-edit = Edit wording
wording-own = your wording
wording-restore = Restore draft
wording-draft-changed = The draft has changed since. It now says:
