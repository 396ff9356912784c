import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Conflict } from "./merge-changes.ts";

/** What a conflict is about, as part of a sentence: `step ev1-loosen: time`, `order in task rig`. */
export function conflictMessage({ list, id, field, base }: Conflict): Message {
  if (list === "head") return message("changes/conflict-head", { field: field ?? "" });
  const kind = message(`changes/one-of-${list}`);
  if (field === "order") {
    return id === null
      ? message("changes/conflict-order", { kind })
      : message("changes/conflict-order-in", { kind, id });
  }
  const of = (what: Message | string) => message("changes/of", { kind, id: id ?? "", what: [what] });
  if (field !== null) return of(field);
  return of(message(base === null ? "changes/conflict-added-twice" : "changes/conflict-dropped"));
}
