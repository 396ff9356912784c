/** What `verify` and `extract` print. */
export const sealSentences = {
  "cli/verify-not-read": "{$file}, line {$line :integer}, is not read: {$why}.",
  "cli/verify-no-key": "“{$key}” is no key of a hub: 43 letters, as its start screen shows it.",
  "cli/verify-no-code": "“{$code}” is no code: twelve letters in groups of three.",
  "cli/verify-source": "Source",
  "cli/verify-by": "Admitted as",
  "cli/verify-admitted": "{$name}, {$role}",
  "cli/verify-verdict": "Verdict",
  "cli/verify-entries": "Entries",
  "cli/verify-sealed": "Sealed",
  "cli/verify-behind": "Behind",
  "cli/verify-finding": "{$source}: {$what}.",
  "cli/verify-finding-at": "{$source}, number {$number :integer}: {$what}.",
  "cli/verify-checkpoint":
    ".input {$entries :integer} .match $entries one {{Checkpoint {$code} of {$entries} entry by {$by} ({$trust}): {$state}.}} * {{Checkpoint {$code} of {$entries} entries by {$by} ({$trust}): {$state}.}}",
  "cli/verify-code":
    ".input {$entries :integer} .match $entries one {{The one entry here: code {$code}, root {$root}, order {$order}.}} * {{All {$entries} entries here: code {$code}, root {$root}, order {$order}.}}",
  "cli/verify-spelled": "Read aloud: {$spelled}.",
  "cli/verify-hub": "{$source} has the key {$key}.",
  "cli/verify-extract-checkpoint": "The checkpoint by {$by} ({$trust}): code {$code}, root {$root}.",
  "cli/extract-nothing": "No entry of {$file} was chosen: nothing is written.",
  "cli/extract-choose": "Say what to take with --step or --kind: an extract of everything is the log itself.",
  "cli/extract-no-checkpoint":
    "{$file} has no checkpoint of a hub that fits it: there is nothing to prove an extract by.",
  "cli/extract-behind":
    ".input {$count :integer} .match $count one {{No checkpoint held one of the entries that were chosen: nothing is written. Take the log again once the hub has made another checkpoint.}} * {{No checkpoint held {$count} of the entries that were chosen: nothing is written. Take the log again once the hub has made another checkpoint.}}",
  "cli/extract-made":
    ".input {$chosen :integer} .match $chosen one {{{$file}: {$chosen} entry in full, {$left :integer} left out.}} * {{{$file}: {$chosen} entries in full, {$left :integer} left out.}}",
  "cli/verify-same":
    ".input {$entries :integer} .match $entries one {{The code you gave is the same: it is of {$entries} entry.}} * {{The code you gave is the same: it is of {$entries} entries.}}",
  "cli/verify-differs":
    "The code you gave is not of this log: it differs in group {$groups :list}. Misheard, or other entries there.",
} as const;
