/** A table pasted from a spreadsheet, and what became of it. */
export const pastedTableWords = {
  "write/row-without-action": "It has no action, so it is no step.",
  "write/row-without-performer": "Nobody is named to do it, here or above, so it is no step.",
  "write/row-of-somebody": "“{$who}” is not in the crew of this procedure, so it is no step.",
  "write/row-time-lost": "“{$written}” is not a time that can be read; the step has none.",
  "write/row-place-lost": "“{$written}” is not a place of this procedure; the step says no place.",
  "write/row-after-lost": "“{$written}” is neither a row of the table nor a step of the procedure.",
  "write/row-after-itself": "It cannot come after itself.",
  "write/no-steps-in-table": "No row of the table can be taken as a step.",
  "write/table-title": "Steps from a table",
  "write/table-how":
    "Look at what each column is taken for, and change it where the guess is wrong. Nothing is put in before that.",
  "write/table-task": "Pasted steps",
  "write/table-column": "Column {$number :integer}",
  "write/table-empty": "nothing in it",
  "write/table-unit": "A bare number in the times is in",
  "write/unit-minutes": "minutes",
  "write/unit-seconds": "seconds",
  "write/unit-hours": "hours",
  "write/use-do": "what is done",
  "write/use-who": "who does it",
  "write/use-time": "how long it takes",
  "write/use-after": "after which rows or steps",
  "write/use-where": "where",
  "write/use-task": "its task",
  "write/use-number": "its number",
  "write/use-none": "not taken",
  "write/table-taken": "{$taken :integer} of {$of :integer} rows become steps.",
  "write/table-lost": "What could not be taken",
  "write/table-row": "Row {$number :integer}",
  "write/table-put": `.input {$count :integer}
.match $count
one {{Put {$count} step in}}
* {{Put {$count} steps in}}`,
  "write/table-leave": "Leave it",
} as const;
