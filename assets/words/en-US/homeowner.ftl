### The homeowner's pages.

homeowner-happened = What happened
homeowner-year = The year
homeowner-options = Options
homeowner-plan = The plan
homeowner-leave-key = Esc
homeowner-prices = Show prices
homeowner-year-title = How your joints move over the year
homeowner-options-title = What can be done
homeowner-proposed = What we propose
homeowner-against = We advise against this: the joints would most likely open again.
homeowner-look = Afterward: { $look }.
homeowner-meanwhile = During the work: { $upset }.
homeowner-come-back = { $years ->
    [one] Chance that cracks or gaps show again within 1 year: { chance-percent }.
   *[other] Chance that cracks or gaps show again within { $years } years: { chance-percent }.
}
homeowner-room-closed = { $work ->
    [0] {""}
    [one] 1 day of work.{" "}
   *[other] { $work } days of work.{" "}
}{ $days ->
    [0] The room stays open.
    [one] The room is closed for 1 day.
   *[other] The room is closed for { $days } days.
}
homeowner-cost = It costs { $total }; you pay { $owner }.
homeowner-cost-all = It costs { $total }.
homeowner-caution = This is an estimate from a few readings. It doesn’t mean the building is safe or sound; local codes and licensed trades come first.
