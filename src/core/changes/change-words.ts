import type { Change, Fields, ListName } from "../procedure/index.ts";
import type { ChangeProblem } from "./change-problem.ts";
import { wordFor } from "./list-table.ts";
import type { UnreadableChanges } from "./read-changes.ts";

/** Why a change cannot be applied, as part of a sentence: `there is no step "a"`. */
export function changeProblemText(problem: ChangeProblem): string {
  const word = wordFor(problem.list);
  switch (problem.code) {
    case "not-there":
      return `there is no ${word} "${problem.id}"`;
    case "several":
      return `more than one ${word} is called "${problem.id}"`;
    case "id-taken":
      return `there is a ${word} "${problem.id}" already`;
    case "no-id":
      return `a ${word} needs an id`;
    case "behind-itself":
      return `a ${word} cannot stand behind itself`;
    case "no-place":
      return `it must be said what the ${word} stands behind, or that it is first`;
    case "wrong-first":
      return problem.list === "steps"
        ? "it must be said in which task the step is first"
        : `a ${word} is first with true, since there is one list of them only`;
    case "id-stays":
      return `"${problem.id}" would be another ${word}; only a rename does that`;
  }
}

/** Why a value is no list of changes, as part of a sentence. */
export function unreadableChangesText(problem: UnreadableChanges): string {
  if (problem.code === "no-list") return 'it is neither a list of changes nor an object with "changes"';
  const which = `change ${problem.index + 1}`;
  switch (problem.code) {
    case "no-form":
      return problem.forms.length > 1
        ? `${which} says both ${problem.forms.join(" and ")}`
        : `${which} says none of add, drop, move, change, rename, bring and head`;
    case "unknown-key":
      return `${which} (${problem.form}) has the key "${problem.key}", which is not known there`;
    case "no-position":
      return `${which} (${problem.form}) must have either "behind" or "first"`;
    case "wrong-value":
      return `${which} (${problem.form}) has no usable "${problem.key}"`;
  }
}

const LONGEST_VALUE = 60;

/** A field's value in words, cut short; a dash where there is none. */
function valueText(value: unknown): string {
  if (value === undefined) return "–";
  const text = typeof value === "string" ? value : JSON.stringify(value);
  return text.length > LONGEST_VALUE ? `${text.slice(0, LONGEST_VALUE - 1)}…` : text;
}

function positionText(list: ListName, { behind, first }: { behind?: unknown; first?: unknown }): string {
  if (behind !== undefined) return `behind ${behind}`;
  if (first === true) return "first";
  return `first in ${list === "steps" ? "task" : "contingency"} ${first}`;
}

const fieldTexts = (before: Fields, set: Fields, unset: readonly string[]): string =>
  [
    ...Object.entries(set).map(([key, value]) => `${key} ${valueText(before[key])} → ${valueText(value)}`),
    ...unset.map((key) => `${key} ${valueText(before[key])} → –`),
  ].join("; ");

/**
 * A change in words, for somebody who compares two revisions: `step ev1-loosen: time PT3M → PT5M`.
 * `before` are the fields of what is changed as they were, where they are known.
 */
export function changeText(change: Change, before: Fields = {}): string {
  if ("head" in change) return `head: ${fieldTexts(before, change.head, change.unset ?? [])}`;
  if ("bring" in change) return `contingency ${change.bring}: brought in behind ${change.behind}`;
  const { list = "steps" } = change;
  const word = wordFor(list);
  if ("add" in change) {
    const { id, do: action, title, label, between, crew } = change.add;
    const name = list === "routes" ? valueText(between) : list === "supplies" ? `${crew} ${id}` : id;
    const says = action ?? title ?? label;
    return `${word} ${name}: added ${positionText(list, change)}${says === undefined ? "" : `: ${valueText(says)}`}`;
  }
  if ("drop" in change) return `${word} ${change.drop}: dropped`;
  if ("move" in change) return `${word} ${change.move}: moved, ${positionText(list, change)}`;
  if ("rename" in change) return `${word} ${change.rename}: renamed to ${change.to}`;
  return `${word} ${change.change}: ${fieldTexts(before, change.set ?? {}, change.unset ?? [])}`;
}
