/** The figures of a walk that are not known: what is missing, and why it can or cannot be set while the walk runs. */
export const figureGapWords = {
  "gap/title": "Not known",
  "gap/not-known": "not known",
  "gap/set-it": "Why this is not known, and what can be done",
  "gap/turn-back": "Turn back",
  "gap/no-limit":
    "The procedure sets no time limit, so there is no margin. A limit belongs to the procedure and cannot be set while a walk runs.",
  "gap/no-forecast":
    "The rest cannot be forecast: what is left fits no window any more, or steps wait for each other. Skip a step with a reason, or close the walk.",
  "gap/no-way-back":
    "No turn-back time can be told, since no way back into a refuge is known or fits. Places and ways belong to the procedure and cannot be set while a walk runs.",
  "gap/no-end-of-supplies":
    "No turn-back time can be told: there is no time limit, and by its planned rate no supply runs down. Two readings at least five minutes apart give a rate.",
  "gap/nothing-runs-out":
    "No turn-back time can be told: the procedure sets neither a time limit nor supplies, and neither can be set while a walk runs.",
  "gap/never-read":
    "Never read, so that the planned rate counts: {$supplies :list}. A reading gives what is really there.",
  "gap/supply-of": "{$crew} {$supply}",
  "gap/no-light":
    "The times of {$windows :list} are not known: the walk was opened without an orbit or a site. A lead chooses one below, for every device, or on the timeline before a walk is opened.",
  "gap/windows-from-start": "The times of {$windows :list} are known once the clock runs.",
  "gap/not-started":
    "The clock has not been started. Until then all times are those of the plan, counted from PET 0.",
  "gap/enter-reading": "Enter a reading",
  "gap/marker-enters": "This tablet watches: whoever marks enters readings.",
} as const;
