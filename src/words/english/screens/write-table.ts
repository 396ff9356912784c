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
} as const;
