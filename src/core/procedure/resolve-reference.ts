import { message } from "../../words/index.ts";
import type { DeclaredIds, ReferenceKind } from "./declared-ids.ts";
import { errorAt } from "./error-at.ts";
import type { Finding, PatchOperation } from "./finding.ts";
import { jsonPointer } from "./json-pointer.ts";
import { nearest, surelyMeant } from "./known-keys.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member, textOf } from "./raw-file.ts";
import type { RawStep } from "./raw-step.ts";
import { namedStep } from "./raw-step.ts";

/** Checks a reference: returns an error when `part` is text that names no declared thing of the kind, else nothing. */
export type Resolve = (kind: ReferenceKind, part: RawPart, step?: RawStep) => Finding[];

/** Returns the check of references ([PRO10]) for the file `root` that declares the given ids. */
export function resolverOf(root: RawPart, ids: DeclaredIds): Resolve {
  const known = new Map(Object.entries(ids).map(([kind, all]) => [kind, new Set<string>(all)]));
  return (kind, part, step) => {
    const id = textOf(part);
    if (id === null || known.get(kind)?.has(id)) return [];
    const meant = nearest(id, ids[kind]);
    const missing = meant
      ? message(`file/no-such-${kind}-meant`, { id, meant })
      : message(`file/no-such-${kind}`, { id });
    const sure = surelyMeant(id, ids[kind]);
    const repair = sure === null || isNamedAlready(root, part, sure) ? null : [renaming(kind, part, sure)];
    const steps = step ? namedStep(step) : [];
    return [errorAt(part, "file/no-such-reference", missing, { steps, things: [id], repair })];
  };
}

/** Checks the references of a location: a crew member, a place or an item. */
export function locationFindings(resolve: Resolve, part: RawPart, step?: RawStep): Finding[] {
  return [
    ...resolve("crew-member", member(part, "crew"), step),
    ...entries(member(part, "crews")).flatMap((crew) => resolve("crew-member", crew, step)),
    ...resolve("place", member(part, "place"), step),
    ...resolve("item", member(part, "item"), step),
  ];
}

/** The patch that lets a reference name another id. Decisions and states are named by a key, so the key is moved. */
function renaming(kind: ReferenceKind, part: RawPart, id: string): PatchOperation {
  const pointer = jsonPointer(part.path);
  return kind === "decision" || kind === "state"
    ? { op: "move", from: pointer, path: jsonPointer([...part.path.slice(0, -1), id]) }
    : { op: "replace", path: pointer, value: id };
}

/** True when the list or object that holds a reference also holds `id`, which the repair would then double. */
function isNamedAlready(root: RawPart, part: RawPart, id: string): boolean {
  const holder = part.path
    .slice(0, -1)
    .reduce<unknown>(
      (value, key) =>
        typeof value === "object" && value !== null
          ? (value as Record<string | number, unknown>)[key]
          : undefined,
      root.value,
    );
  if (Array.isArray(holder)) return holder.includes(id);
  return typeof holder === "object" && holder !== null && Object.hasOwn(holder, id);
}
