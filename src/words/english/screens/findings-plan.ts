/** What there is to say of a plan in its windows, its light and its limit. */
export const findingsOfPlanWords = {
  "time/over-limit": "The plan runs {$over :integer} min over the elapsed limit.",
  "light/decayed": "By its element set the orbit decays within a day of the start.",
  "window/not-known-start":
    "When {$window} comes is not known without the instant of PET 0; the plan takes no account of it.",
  "window/not-known-orbit":
    "When {$window} comes is not known without an orbit and a start instant; the plan takes no account of it.",
  "window/no-fit":
    '"{$step}" takes {$length :number} min and can start at PET {$ready :clock} at the earliest. {$why :message} {$mend :message}',
  "window/not-open-after":
    ".input {$count :integer} .match $count one {{After that {$windows :list style=chained} is not open.}} * {{After that {$windows :list style=chained} are not open together.}}",
  "window/too-short":
    ".input {$count :integer} .match $count one {{After that {$windows :list style=chained} is open for {$longest :number} min at the longest, {$short :number} min too short.}} * {{After that {$windows :list style=chained} are open together for {$longest :number} min at the longest, {$short :number} min too short.}}",
  "window/call-out-of-contact":
    '"{$step}" speaks with the ground from PET {$start :clock} to {$finish :clock}, outside {$windows :list style=chained}. Name a window of contact in "within", so that the call waits for it, or move the call.',
  "window/fits-earlier":
    "It would fit if it could start {$earlier :number} min earlier, by PET {$at :clock}.",
  "window/fits-shorter": "It would fit if it took {$less :number} min less.",
  "window/fits-earlier-or-shorter":
    "It would fit if it could start {$earlier :number} min earlier, by PET {$at :clock}, or if it took {$less :number} min less.",
  "window/fits-never": "No span of {$windows :list style=chained} is ever long enough.",
  "time/done-late":
    '"{$step}" must be done by PET {$by :clock}, and in the plan it is at {$at :finish form=second}: {$over :length} too late.',
  "time/done-late-bound":
    '"{$step}" must be done by PET {$by :clock}, and in the plan it is at {$at :finish form=second}: {$over :length} too late. {$crew :list} with "{$other}" lets it start last.',
  "time/started-late":
    '"{$step}" must start within {$within :length} after "{$after}", and in the plan it starts {$over :length} too late.',
  "time/started-late-bound":
    '"{$step}" must start within {$within :length} after "{$after}", and in the plan it starts {$over :length} too late. {$crew :list} with "{$other}" lets it start last.',
  "place/too-far-apart":
    '{$one} and {$other} are {$metres :metres} apart by the ways at the end of "{$step}", PET {$at :clock}: {$over :metres round=up} more than the {$apart :metres} that are allowed.',
} as const;
