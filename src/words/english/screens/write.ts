/** Why something cannot be done to a procedure that is being written. */
export const writeWords = {
  "write/no-procedure": "The procedure would have no shape that can be read.",
  "write/no-row": "Choose a task or a step first.",
  "write/nothing-chosen": "Choose a step first.",
  "write/last-task": "A procedure needs at least one task.",
  "write/tasks-or-steps": "Choose either whole tasks or single steps of the same part.",
  "write/beside-itself": "Rows cannot be moved beside themselves.",
  "write/at-the-end": "It is last already.",
  "write/at-the-beginning": "It is first already.",
  "write/join-several": "Choose two steps or more to join them.",
  "write/join-neighbours": "Only steps that follow each other in one task can be joined.",
  "write/join-people": "Only steps that the same people do can be joined.",
  "write/join-conditions": "Only steps under the same conditions can be joined.",
  "write/join-places": "Only steps at the same place can be joined, and no translation but the last.",
  "write/join-one-only":
    "More than one of them has a confirmation, a decision, an anchor, a brief, a bound on its time, or others who could do it; or a later one needs a state. Take that out first.",
  "write/join-records": "Two of their records have the same name. Rename one of them first.",
  "write/no-rows-in-text": "What was pasted holds no steps and no tasks.",
  "write/nothing-wanted": "Type what is to be found first.",
  "write/not-found": "“{$text}” is in no text of the rows.",
  "write/link-steps": "Choose a step, and the step that it comes after.",
  "write/link-itself": "A step cannot come after itself.",
  "write/link-ring":
    "“{$step}” cannot come after “{$other}”: with that, they would wait for each other, and nobody could go on.",
  "write/nobody": "Somebody must do the step: add another crew member first.",
  "write/hand-over-itself": "Giver and receiver must be two people.",
  "write/not-held": "{$crew} does not hold {$item} at that moment of the plan.",
} as const;
