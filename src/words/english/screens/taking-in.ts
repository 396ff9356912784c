/** What the shelf says of files that it is given. Its first screen says none of it. */
export const takingInWords = {
  "shelf/nothing-given": "There is nothing to take in: no file and no text.",
  "shelf/of-file": "{$file}: {$what}",
  "shelf/log-taken-in":
    ".input {$added :integer} .input {$known :integer} .input {$walks :integer} .match $added $walks one one {{{$added} entry taken in, {$known} known already, for {$walks} walk.}} one * {{{$added} entry taken in, {$known} known already, for {$walks} walks.}} * one {{{$added} entries taken in, {$known} known already, for {$walks} walk.}} * * {{{$added} entries taken in, {$known} known already, for {$walks} walks.}}",
  "shelf/conflicting": "{$count :integer} left out: other entries have the same source and id.",
  "shelf/line-left-out": "Line {$line :integer} was left out: {$why}.",
  "shelf/more-lines-left-out":
    ".input {$count :integer} .match $count one {{{$count} more line was left out.}} * {{{$count} more lines were left out.}}",
  "shelf/extract-opened": "It is an extract of a log: it is shown, and nothing of it is taken in.",
  "shelf/unknown-file": "It is neither a procedure, nor the log of a walk, nor a backup of this app.",
  "shelf/backup-taken-in":
    ".input {$procedures :integer} .input {$entries :integer} .match $procedures $entries one one {{{$procedures} procedure and {$entries} entry taken in; the rest was here already.}} one * {{{$procedures} procedure and {$entries} entries taken in; the rest was here already.}} * one {{{$procedures} procedures and {$entries} entry taken in; the rest was here already.}} * * {{{$procedures} procedures and {$entries} entries taken in; the rest was here already.}}",
  "shelf/procedure-taken-in": "“{$title}” is on the shelf.",
  "shelf/procedure-known": "“{$title}” was on the shelf already.",
  "shelf/procedure-refused": "It cannot be used as a procedure.",
  "shelf/finding-at-line": "Line {$line :integer}: {$finding :message}",
} as const;
