/** What a briefing says: captions made from the steps, its controls, its storyboard and its quiz. */
export const briefWords = {
  "brief/do": "{#b}{$crew :message}:{/b} {$action}",
  "brief/do-together": "{#b}{$crew :message}, together:{/b} {$action}",
  "brief/skipped": "{#b}{$crew :message}:{/b} skipped: {$action}",
  "brief/task": "{#b}{$number :integer} {$title}:{/b} {$crew :message}",
  "brief/waits":
    ".input {$count :integer} .match $count one {{{$crew :message} waits.}} * {{{$crew :message} wait.}}",
  "brief/waits-hold":
    ".input {$count :integer} .match $count one {{{$crew :message} waits for the hold to be lifted.}} * {{{$crew :message} wait for the hold to be lifted.}}",
  "brief/waits-lag":
    ".input {$count :integer} .match $count one {{{$crew :message} waits for time to pass after {$step}.}} * {{{$crew :message} wait for time to pass after {$step}.}}",
  "brief/waits-not-before":
    ".input {$count :integer} .match $count one {{{$crew :message} waits for PET {$pet :pet}.}} * {{{$crew :message} wait for PET {$pet :pet}.}}",
  "brief/waits-window":
    ".input {$count :integer} .match $count one {{{$crew :message} waits for {$window}.}} * {{{$crew :message} wait for {$window}.}}",
  "brief/waits-crew":
    ".input {$count :integer} .match $count one {{{$crew :message} waits for {$other :message} at {$step}.}} * {{{$crew :message} wait for {$other :message} at {$step}.}}",
} as const;
