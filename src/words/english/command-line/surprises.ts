/** Surprises of rehearsals on the command line. */
export const surpriseSentences = {
  "cli/surprises-laid":
    ".input {$count :integer} .match $count one {{{$count} of {$of :integer} surprises was laid; the review of the walk tells it.}} * {{{$count} of {$of :integer} surprises were laid; the review of the walk tells them.}}",
  "cli/surprises": "Surprises",
  "cli/surprise-came": "{$at :clock} {$title}: {$effect}",
  "cli/surprise-never": "never came: {$title}: {$effect}",
  "cli/surprise-expected": "Expected of {$crew :list} within {$time :length}: {$notice} {$act}",
  "cli/surprise-unnoticed": "No entry shows that it was noticed.",
  "cli/surprise-sign": "{$at :clock} {$who}: {$what}",
  "cli/surprise-sign-said": "{$at :clock} {$who}: {$what}; {$said}",
  "cli/surprise-cost":
    ".input {$way :string} .match $way earlier {{The finish was forecast {$time :length form=second} earlier after it.}} * {{The finish was forecast {$time :length form=second} later after it.}}",
  "cli/surprise-margin": "The margin went from {$before :margin} to {$after :margin}.",
  "cli/surprise-supply":
    "{$supply} of {$crew} at the end went from {$before :quantity} to {$after :quantity}.",
  "cli/surprises-alone":
    '{$file} holds surprises: name the file of the procedure "{$procedure}" beside it, too.',
} as const;
