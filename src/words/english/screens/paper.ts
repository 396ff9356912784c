/** Steps that were done while the crew worked from paper, entered afterwards with their times. */
export const paperWords = {
  "paper/title": "Enter from paper",
  "paper/how":
    "Tick what was done meanwhile, and write when each was done. All of it is entered at once, with these times, by {$who}.",
  "paper/owed":
    "Values and confirmations are entered afterwards at their steps: what is missing stands under “Outstanding”.",
  "paper/clock": "The times are",
  "paper/clock-pet": "PET, hours:minutes",
  "paper/clock-utc": "UTC, hours:minutes",
  "paper/step": "{$number} {$crew}: {$step}",
  "paper/done-at": "Time of step {$number}",
  "paper/outcome": "How step {$number} came out",
  "paper/choose-outcome": "Choose how it came out",
  "paper/none":
    "There is no step to enter: each one is complete, or hangs on a decision that has not been taken.",
  "paper/more":
    ".input {$count :integer} .match $count one {{Show {$count} more step}} * {{Show {$count} more steps}}",
  "paper/enter":
    ".input {$count :integer} .match $count one {{Enter {$count} step}} * {{Enter {$count} steps}}",
  "paper/entered":
    ".input {$count :integer} .match $count one {{{$count} step was entered.}} * {{{$count} steps were entered.}}",
  "paper/refused":
    ".input {$count :integer} .match $count one {{Nothing was entered: at {$count} step it says why.}} * {{Nothing was entered: at {$count} steps it says why.}}",
  "paper/nothing-ticked": "Nothing is ticked.",
  "paper/not-open": "This step is complete already, or is not performed as decisions came out.",
  "paper/no-time": "Write when it was done: hours:minutes such as 1:05, or with seconds 1:05:30.",
  "paper/before-zero": "That is before the clock was started, at {$zero :utc form=time-second} UTC.",
  "paper/in-future": "That is later than now, PET {$now :clock} or {$utc :utc form=time-second} UTC.",
  "paper/needs-outcome": "Choose how it came out.",
  "paper/hangs-on":
    "It follows step {$number} ({$step}), which did not come out as expected: enter that one first, and then this one.",
  "paper/after-open":
    "It follows step {$number} ({$step}), which is not done: tick that one too. If it was really done out of order, open this step in the list and say why.",
  "paper/after-later": "It follows step {$number} ({$step}), and that was done later, at PET {$at :clock}.",
} as const;
