### The answer above the rooms.

answer-will-last = This repair will likely last.
answer-will-not-last = This repair will likely not last.
answer-not-yet = There is not enough to go on yet.
answer-costs-less = Costs less, callbacks included:
papers-leave-out = { $count ->
    [one] What you typed can’t be used in this field, so papers leave it out: { $fields }. Correct it, or press the button again to write them without it.
   *[other] What you typed can’t be used in these fields, so papers leave it out: { $fields }. Correct them, or press the button again to write them without it.
}
answer-rough = Still a rough answer: measure more before you promise it.
answer-more =
    { $count ->
        [one] 1 more
       *[other] { $count } more
    }
answer-missing = Still missing:
answer-go = Go to where it’s entered

list-search = Find in the list
    .hint = type to find
list-search-none = Nothing in the list is called that
list-sold-as = { $name } (sold as { $sold_as })
list-sold-as-several = Several species are sold under that name. The grade stamp or the supplier says which. If neither does, take the first: it moves the most.
list-choose = Choose…

## What the program is

about-program = Gapwright { $version }
about-license = MIT or Apache-2.0, at your option.
about-fonts = Typefaces on the papers: Inter and Noto, SIL Open Font License 1.1.
about-climate = Climates: monthly CLIMAT reports of the Deutscher Wetterdienst, Climate Data Center (CC BY 4.0), quality-controlled and averaged; typical years of the US Department of Energy.
about-places = Towns: GeoNames (CC BY 4.0). ZIP codes: US Census Bureau.
about-network = Gapwright opens no network connection.
about-libraries = { $count } libraries it is built from, with their licenses
about-close = Close
