/** By when a walk is over, as so many samples of ten say, and what samples miss or break. */
export const outlookWords = {
  "outlook/half": "half by {$finish :finish}",
  "outlook/half-margin": "half by {$finish :finish}, {$margin :margin} margin",
  "outlook/half-over": "half by {$finish :finish}, {$margin :length} over",
  "outlook/half-none": "less than half fit their windows",
  "outlook/nine-in-ten": "nine in ten by {$finish :finish}",
  "outlook/nine-in-ten-margin": "nine in ten by {$finish :finish}, {$margin :margin} margin",
  "outlook/nine-in-ten-over": "nine in ten by {$finish :finish}, {$margin :length} over",
  "outlook/nine-in-ten-none": "less than nine in ten fit their windows",
  "risk/title": "What samples miss",
  "risk/how": "Durations are drawn from PERT-beta distributions; shares are of {$samples :integer} samples.",
  "risk/unfit":
    "In {$share :chance of=harm} of the samples a step misses its windows: {$windows :list}, at {$steps :list}",
  "risk/of": "{$name} {$share :chance of=harm}",
  "risk/done-late": "{$step} is done later than {$by :pet} in {$share :chance of=harm} of the samples",
  "risk/started-late":
    "{$step} starts more than {$within :margin} after {$after} in {$share :chance of=harm} of the samples",
} as const;
