### The proposal: terms a contractor signs. Laws are told in general terms, each to be checked where the job is.

proposal-class-or-better = We use sealant of the class named, or better.
proposal-counted = { $count ->
    [one] 1 of these joints was not measured; it counts as open because most of those measured are.
   *[other] { $count } of these joints were not measured; they count as open because most of those measured are.
}
proposal-excluded = { $what ->
    [hidden] Repair of rot, wet insulation, or other damage that shows only once we open the joints
    [trades] Work on the roof, plumbing, wiring, framing, or heating, and finding or fixing a leak
    [testing] Testing for or removing lead, asbestos, PCBs, or mold
    [permits] Permits and fees, unless your local rules put them on us
   *[furniture] Moving furniture out of the room and back
}
proposal-excluded-narrow = Joints narrower than { $narrowest } on the day we seal: caulk can’t grip there, so we leave them open
proposal-warranted-beads =
    { $years ->
        [one] For 1 year after we finish, we come back and fix it at no charge if more than { $share } of the length we sealed opens, or any joint we sealed opens wider than { $widest }.
       *[other] For { $years } years after we finish, we come back and fix it at no charge if more than { $share } of the length we sealed opens, or any joint we sealed opens wider than { $widest }.
    }
proposal-warranted-work =
    { $years ->
        [one] For 1 year after we finish, we come back and fix it at no charge if anything we put in or painted comes loose, splits, or peels.
       *[other] For { $years } years after we finish, we come back and fix it at no charge if anything we put in or painted comes loose, splits, or peels.
    }
proposal-come-back = { $band ->
    [under] We put the chance that this warranty is called on at under { $chance }.
    [over] We put the chance that this warranty is called on at over { $chance }.
   *[plain] We put the chance that this warranty is called on at about { $chance }.
}
proposal-come-back-paint = That leaves out fine cracks in the paint over caulk that holds: the warranty doesn’t cover them. With those, it is { chance-percent }, as in the letter.
proposal-water-first = { $count ->
    [one] Water has gotten into section { $sections }, and may still be getting in. The leak has to be found and fixed, and the boards have to dry, before this work starts. That is not in this price.
   *[other] Water has gotten into sections { $sections }, and may still be getting in. The leak has to be found and fixed, and the boards have to dry, before this work starts. That is not in this price.
}
proposal-no-warranty = This proposal gives no written warranty. State law may still give you rights.
proposal-against-not-warranted = We advise against this repair, so we can’t warrant that the joints stay closed.
proposal-hairlines = Gaps and cracks in the paint narrower than { $seen }
proposal-not-warranted = { $what ->
    [water] Damage from leaks, floods, or boards that get wet after the work
    [house] Movement of the framing or the house
   *[others] Joints and surfaces not named above, and work others do on ours
}
proposal-not-warranted-air = Gaps that open while the room is drier than about { $low } or damper than about { $high } humidity
proposal-balance = { $amount } is due when the work is finished.
proposal-due = { $amount } is due when the work is finished.
proposal-supplier = We are asking the supplier for { $amount }. They haven’t agreed to it yet. You owe no more than your part above unless you agree to it in writing.

proposal-notice-name = { $notice ->
    [lead] Lead paint
    [cancel] Right to cancel
    [contract] Contract rules
   *[liens] Liens
}
proposal-notice = { $notice ->
    [lead] In a home built before 1978, paid work that disturbs more than { $units ->
        [inches] 6 sq ft
       *[millimeters] 0.56 m²
    } of paint in a room usually takes an EPA-certified firm, and you get the pamphlet “Renovate Right” no more than 60 days before work starts (40 CFR 745, subpart E, 2008). State programs may ask for more. Check your local rules.
    [cancel] If you sign at home, you can usually cancel until midnight of the third business day after signing; Saturdays count, Sundays and federal holidays don’t (16 CFR 429, as amended 2015; sales of $25 or more). You then get two dated cancellation forms with this proposal. Your state may give you longer. Check your local rules.
    [contract] Many states ask for a written contract with a license or registration number, and limit the deposit. Check your local rules.
   *[liens] In many states, workers and suppliers who aren’t paid can file a lien on your home. Ask for a lien release with each payment. Check your local rules.
}

## Headings and labels of the template

paper-proposal-number = No.
paper-proposal-date = Date
paper-proposal-valid-until = Good until
paper-proposal-license = License no.
paper-proposal-insurance = Insurance
paper-proposal-at = Where
paper-proposal-for = For
paper-proposal-scope = What we will do
paper-proposal-where = where
paper-proposal-excluded = Not included
paper-proposal-warranted = What we warrant
paper-proposal-not-warranted = Not covered by the warranty
paper-proposal-price = Price
paper-proposal-payment = Payment
paper-proposal-changes = If we find damage or water, or you want something changed, we stop, tell you the price and the extra days, and go on once we both have signed the change.
paper-proposal-notices = Notices that usually apply
paper-proposal-notices-note = General information, not legal advice.
paper-proposal-acceptance = Acceptance
paper-proposal-accept = I accept this proposal, all pages: the work, the price, and the terms above.
paper-proposal-pamphlet = I received the pamphlet “Renovate Right” before work started. Homeowner’s initials and date:
paper-proposal-no-work = The selected option takes no work, so there is nothing to propose.
paper-proposal-warning = Please read first
