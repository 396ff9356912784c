/** A decision on the follow screen: what each outcome would lead to, and what holds while it is asked again. */
export const decisionWords = {
  "decision/asked-again":
    "Open again: {$outcome} stays in force until this is decided anew, and its branch waits.",
  "decision/branch-asked-again":
    "Step {$number} is decided again: this is on the branch {$outcome}, which waits until then.",
  "decision/leads-to": "What each outcome would lead to, by likely times from here",
  "decision/expected": "expected",
  "decision/in-force": "in force",
  "decision/no-steps": "No step of its own.",
  "decision/steps": `.input {$count :integer} .match $count one {{One step of its own.}} * {{{$count} steps of its own.}}`,
  "decision/steps-at": `.input {$count :integer} .match $count one {{One step of its own: {$places :list}.}} * {{{$count} steps of its own: {$places :list}.}}`,
  "decision/joint": "Joint step {$step} can begin in {$time :length}.",
  "forecast/finish": "Finish {$finish :finish}.",
  "forecast/finish-margin": "Finish {$finish :finish}, {$margin :margin} margin.",
  "forecast/finish-over": "Finish {$finish :finish}, {$margin :length} over.",
  "forecast/none-with-it": "With this the rest cannot be forecast.",
  "decision/before-start": "Times are told once the clock runs.",
} as const;
