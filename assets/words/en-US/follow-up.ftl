### Later visits against what was forecast.

follow-up-nothing-measured = Nothing has been measured yet.
follow-up-too-soon = Too soon to tell: the driest weeks are still to come.
follow-up-out-of-range = This visit is before the first one or more than three years after it: nothing was forecast for it.
follow-up-no-forecast = What the first visit forecast is not about these joints as they are now.
follow-up-lines =
    { $wider ->
        [0] { $of ->
            [one] The joint checked is no wider than the { $widest } we gave for the driest weeks.
           *[other] None of the { $of } joints checked is wider than the { $widest } we gave for the driest weeks.
        }
       *[other] { $of ->
            [one] The joint checked is wider than the { $widest } we gave for the driest weeks. We are looking for the reason.
           *[other] { $wider } of { $of } joints checked came out wider than the { $widest } we gave for the driest weeks. We are looking for the reason.
        }
    }
follow-up-covered = Strips cover these joints, so there is no gap to measure. Look for strips that have come loose or split.
follow-up-told = In our papers of { $on }, we offered this repair for { $price }: { $option }.
follow-up-told-sealing = Sealing was planned for { $day }.
follow-up-told-lasts =
    { $doubt ->
        [wide] We put the chance that it lasts through { $until } at { $chance }, and that was far from sure.
       *[known] We put the chance that it lasts through { $until } at { $chance } (90% range: { $low } to { $high }).
    }
follow-up-told-nothing = No papers were written from this job before these visits, so they are compared with what the first visit alone would have forecast.
follow-up-did-other = What we did in the end: { $option }.
follow-up-finished = The work was finished on { $on }.
follow-up-not-finished = The work hasn’t been done yet, so the forecast is for the gaps as they are.
follow-up-forecast =
    { $side ->
        [narrower] { $of ->
            [one] { $inside ->
                [0] The gap is out of the forecast range: { $off } narrower than forecast.
               *[other] The gap is in the forecast range, { $off } narrower than forecast.
            }
           *[other] { $inside ->
                [one] 1 of { $of } gaps is in the forecast range; on average, gaps are { $off } narrower than forecast.
               *[other] { $inside } of { $of } gaps are in the forecast range; on average, gaps are { $off } narrower than forecast.
            }
        }
       *[wider] { $of ->
            [one] { $inside ->
                [0] The gap is out of the forecast range: { $off } wider than forecast.
               *[other] The gap is in the forecast range, { $off } wider than forecast.
            }
           *[other] { $inside ->
                [one] 1 of { $of } gaps is in the forecast range; on average, gaps are { $off } wider than forecast.
               *[other] { $inside } of { $of } gaps are in the forecast range; on average, gaps are { $off } wider than forecast.
            }
        }
    }
follow-up-forecast-holds = The forecast holds.
follow-up-forecast-fails = The forecast does not hold: look for water, for a change in the heating, or for the wrong species.
follow-up-opened =
    { $of ->
        [one] { $open ->
            [0] The joint checked has not opened.
           *[other] The joint checked has opened.
        }
       *[other] { $open ->
            [one] 1 of { $of } joints checked has opened.
           *[other] { $open } of { $of } joints checked have opened.
        }
    }
follow-up-opened-expected =
    { $of ->
        [one] { $open ->
            [0] The joint checked has not opened; we expected { $expected ->
                [0] none to
               *[other] about { $expected }
            }.
           *[other] The joint checked has opened; we expected { $expected ->
                [0] none to
               *[other] about { $expected }
            }.
        }
       *[other] { $open ->
            [one] 1 of { $of } joints checked has opened; we expected { $expected ->
                [0] none to
               *[other] about { $expected }
            }.
           *[other] { $open } of { $of } joints checked have opened; we expected { $expected ->
                [0] none to
               *[other] about { $expected }
            }.
        }
    }
follow-up-surprise =
    { $surprise ->
        [too_many] That is more than chance explains.
        [more] That is more than we expected, and it may still be chance.
        [fewer] That is fewer than expected.
       *[as_expected] That is within what chance explains.
    }
follow-up-find-out = Find out why before sealing again.
follow-up-forecast-few =
    { $count ->
        [one] One joint says little yet.
       *[other] { $count } joints say little yet.
    }
follow-up-forecast-missed = That is not what we forecast. We are looking for the reason.
follow-up-checked =
    { $checked ->
        [one] We checked 1 of the { $sealed } joints we sealed; what we found open is { $share } of their length.
       *[other] We checked { $checked } of the { $sealed } joints we sealed; what we found open is { $share } of their length.
    }
follow-up-warranty =
    { $count ->
        [0] None is open wider than { $widest }. Our warranty through { $until } allows { $widest }, and { $limit } of the length.
        [one] One is open wider than { $widest }. Our warranty through { $until } allows { $widest }, and { $limit } of the length. We will come back and fix it at no charge.
       *[other] { $count } are open wider than { $widest }. Our warranty through { $until } allows { $widest }, and { $limit } of the length. We will come back and fix them at no charge.
    }
follow-up-warranty-share = That is more than the { $limit } of our warranty, which runs through { $until }. We will come back and fix it at no charge.
