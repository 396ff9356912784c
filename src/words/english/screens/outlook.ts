/** By when a walk is over, as so many samples of ten say. */
export const outlookWords = {
  "outlook/half": "half by {$finish :finish}",
  "outlook/half-margin": "half by {$finish :finish}, {$margin :margin} margin",
  "outlook/half-over": "half by {$finish :finish}, {$margin :length} over",
  "outlook/half-none": "less than half fit their windows",
  "outlook/nine-in-ten": "nine in ten by {$finish :finish}",
  "outlook/nine-in-ten-margin": "nine in ten by {$finish :finish}, {$margin :margin} margin",
  "outlook/nine-in-ten-over": "nine in ten by {$finish :finish}, {$margin :length} over",
  "outlook/nine-in-ten-none": "less than nine in ten fit their windows",
} as const;
