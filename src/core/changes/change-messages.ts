import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Change, Fields, ListName } from "../procedure/index.ts";
import type { ChangeProblem } from "./change-problem.ts";
import type { UnreadableChanges } from "./read-changes.ts";

/** What kind of thing the members of a list are, as a label in front of one: a step, a crew member. */
const kindOf = (list: ListName): Message => message(`changes/one-of-${list}`);

/** Why a change cannot be applied, as part of a sentence: `there is no step "a"`. */
export function changeProblemMessage(problem: ChangeProblem): Message {
  const kind = kindOf(problem.list);
  switch (problem.code) {
    case "not-there":
    case "several":
    case "id-taken":
    case "id-stays":
      return message(`changes/${problem.code}`, { kind, id: problem.id });
    case "no-id":
    case "behind-itself":
    case "no-place":
      return message(`changes/${problem.code}`, { kind });
    case "wrong-first":
      return problem.list === "steps"
        ? message("changes/first-in-which-task")
        : message("changes/wrong-first", { kind });
  }
}

/** Why a value is no list of changes, as part of a sentence. */
export function unreadableChangesMessage(problem: UnreadableChanges): Message {
  if (problem.code === "no-list") return message("changes/no-list");
  const number = problem.index + 1;
  switch (problem.code) {
    case "no-form":
      return problem.forms.length > 1
        ? message("changes/several-forms", { number, forms: problem.forms })
        : message("changes/no-form", { number });
    case "unknown-key":
    case "wrong-value":
      return message(`changes/${problem.code}`, { number, form: problem.form, key: problem.key });
    case "no-position":
      return message("changes/no-position", { number, form: problem.form });
  }
}

const LONGEST_VALUE = 60;

/** A field's value as JSON, a text as it is, cut short; a dash where there is none. */
function valueText(value: unknown): string {
  if (value === undefined) return "–";
  const text = typeof value === "string" ? value : JSON.stringify(value);
  return text.length > LONGEST_VALUE ? `${text.slice(0, LONGEST_VALUE - 1)}…` : text;
}

function positionMessage(
  how: "added" | "moved",
  list: ListName,
  { behind, first }: { behind?: unknown; first?: unknown },
): Message {
  if (behind !== undefined) return message(`changes/${how}-behind`, { id: String(behind) });
  if (first === true) return message(`changes/${how}-first`);
  const within = list === "steps" ? "task" : "contingency";
  return message(`changes/${how}-first-in-${within}`, { id: String(first) });
}

const fieldMessages = (before: Fields, set: Fields, unset: readonly string[]): readonly Message[] =>
  [...Object.entries(set), ...unset.map((key) => [key, undefined] as const)].map(([key, value]) =>
    message("changes/field", { key, before: valueText(before[key]), after: valueText(value) }),
  );

/**
 * A change in words, for somebody who compares two revisions: `step ev1-loosen: time PT3M → PT5M`.
 * `before` are the fields of what is changed as they were, where they are known.
 */
export function changeMessage(change: Change, before: Fields = {}): Message {
  if ("head" in change)
    return message("changes/head", { fields: fieldMessages(before, change.head, change.unset ?? []) });
  if ("bring" in change) return message("changes/brought", { id: change.bring, behind: change.behind });
  const { list = "steps" } = change;
  const of = (id: string, what: readonly (Message | string)[]) =>
    message("changes/of", { kind: kindOf(list), id, what });
  if ("add" in change) {
    const { id, do: action, title, label, between, crew } = change.add;
    const name = list === "routes" ? valueText(between) : list === "supplies" ? `${crew} ${id}` : String(id);
    const says = action ?? title ?? label;
    const added = positionMessage("added", list, change);
    return of(name, says === undefined ? [added] : [added, valueText(says)]);
  }
  if ("drop" in change) return of(change.drop, [message("changes/dropped")]);
  if ("move" in change) return of(change.move, [positionMessage("moved", list, change)]);
  if ("rename" in change) return of(change.rename, [message("changes/renamed", { to: change.to })]);
  return of(change.change, fieldMessages(before, change.set ?? {}, change.unset ?? []));
}
