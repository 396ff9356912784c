import { message } from "../../words/index.ts";
import { errorAt } from "./error-at.ts";
import type { Finding } from "./finding.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member, textOf } from "./raw-file.ts";
import type { RawStep } from "./raw-step.ts";
import { idOf } from "./raw-step.ts";

/** The kinds of thing that a reference can name. */
export type ReferenceKind =
  | "crew-member"
  | "place"
  | "item"
  | "window"
  | "step"
  | "decision"
  | "supply"
  | "state"
  | "picture";

/** The kinds of thing that have ids of their own, each used once. */
type DoubledKind =
  | "crew"
  | "place"
  | "item"
  | "window"
  | "step"
  | "decision"
  | "supply"
  | "task"
  | "contingency"
  | "watch"
  | "record"
  | "state"
  | "picture";

type KeyOf = (part: RawPart) => string | null;

/** The ids of each kind that a file declares, in the order of the file, each of them once. */
export type DeclaredIds = Readonly<Record<ReferenceKind, readonly string[]>>;

/** A supply's id is unique among the supplies of its crew member only. */
const supplyKey: KeyOf = (part) => `${textOf(member(part, "crew"))} ${idOf(part)}`;

const stepParts = (steps: readonly RawStep[]) => steps.map(({ part }) => part);
const decisionParts = (steps: readonly RawStep[]) =>
  steps.map(({ part }) => member(part, "decide")).filter(({ value }) => value !== undefined);

/** The ids that a file of any shape declares. */
export function declaredIds(root: RawPart, steps: readonly RawStep[]): DeclaredIds {
  const list = (key: string) => entries(member(root, key));
  const ids = (parts: readonly RawPart[], keyOf: KeyOf = idOf) => [
    ...new Set(parts.flatMap((part) => keyOf(part) ?? [])),
  ];
  return {
    "crew-member": ids(list("crew")),
    place: ids(list("places")),
    item: ids(list("items")),
    window: ids(list("windows")),
    step: ids(stepParts(steps)),
    decision: ids(decisionParts(steps)),
    supply: ids(list("supplies"), supplyKey),
    state: ids(list("states")),
    picture: ids(list("pictures")),
  };
}

/** An error for each id in a file that was used before, except for those of records. */
export function doubledIdFindings(root: RawPart, steps: readonly RawStep[]): Finding[] {
  const list = (key: string) => entries(member(root, key));
  const contingencies = list("contingencies");
  return [
    ...doubledIds(list("crew"), "crew"),
    ...doubledIds(list("places"), "place"),
    ...doubledIds(list("items"), "item"),
    ...doubledIds(list("windows"), "window"),
    ...doubledIds(list("states"), "state"),
    ...doubledIds(list("pictures"), "picture"),
    ...doubledIds(stepParts(steps), "step"),
    ...doubledIds(decisionParts(steps), "decision"),
    ...doubledIds(list("supplies"), "supply", supplyKey),
    ...doubledIds(
      [root, ...contingencies].flatMap((holder) => entries(member(holder, "tasks"))),
      "task",
    ),
    ...doubledIds(contingencies, "contingency"),
    ...doubledIds(list("watches"), "watch"),
  ];
}

/** An error for each of the given parts that has the same id as an earlier one. */
export function doubledIds(parts: readonly RawPart[], kind: DoubledKind, keyOf: KeyOf = idOf): Finding[] {
  const seen = new Set<string>();
  return parts.flatMap((part) => {
    const key = keyOf(part);
    if (key === null) return [];
    const isDoubled = seen.has(key);
    seen.add(key);
    if (!isDoubled) return [];
    const said = message(`file/doubled-${kind}-id`, { id: String(idOf(part)) });
    return [errorAt(member(part, "id"), "file/doubled-id", said, { things: [key] })];
  });
}
