import type { Fields, ListName } from "../procedure/index.ts";
import type { ChangeProblem } from "./change-problem.ts";
import { hasId, heldBy, idOf, keyFor, LISTS } from "./list-table.ts";
import type { Holder } from "./members.ts";
import { holdersOf } from "./members.ts";

/** A member that was looked for, or why it was not found. */
export type Found =
  | { readonly holder: Holder; readonly index: number; readonly member: Fields; readonly problem: null }
  | { readonly problem: ChangeProblem };

/** The one member of a list that is meant, or why there is none. Lists are long and this is asked of every change: no copies. */
function onlyOne(root: Fields, list: ListName, id: string, isMeant: (member: Fields) => boolean): Found {
  let found: Found = { problem: { code: "not-there", list, id } };
  for (const holder of holdersOf(root, list)) {
    for (let index = 0; index < holder.members.length; index += 1) {
      const member = holder.members[index];
      if (!member || !isMeant(member)) continue;
      if (!found.problem) return { problem: { code: "several", list, id } };
      found = { holder, index, member, problem: null };
    }
  }
  return found;
}

/** The member of a list with an id. A supply may be named without its crew member where no other has its id. */
export function findMember(root: Fields, list: ListName, id: string): Found {
  const found = onlyOne(root, list, id, hasId(list, id));
  return found.problem?.code === "not-there" && list === "supplies"
    ? onlyOne(root, list, id, (member) => member["id"] === id)
    : found;
}

/** Whether a list has a member with an id, or several. */
export const isThere = (root: Fields, list: ListName, id: string) =>
  findMember(root, list, id).problem?.code !== "not-there";

/** The first id that two members have, here and in what the members hold. */
export function doubledId(root: Fields): ChangeProblem | null {
  for (const list of LISTS) {
    const seen = new Set<string>();
    // Two ways between the same places are no mistake.
    if (list === "routes") continue;
    for (const { members } of holdersOf(root, list)) {
      for (const member of members) {
        const id = idOf(list, member);
        if (id === null) return { code: "no-id", list };
        if (seen.has(keyFor(list, id))) return { code: "id-taken", list, id };
        seen.add(keyFor(list, id));
      }
    }
  }
  return null;
}

/** The ids that a member and everything in it would bring into a file, by list. */
export function idsWithin(list: ListName, member: Fields): [ListName, string | null][] {
  const held = heldBy(list);
  const inner = held === null ? [] : member[held];
  return [
    [list, idOf(list, member)],
    ...(held !== null && Array.isArray(inner)
      ? inner.flatMap((one: unknown) => idsWithin(held, (one ?? {}) as Fields))
      : []),
  ];
}
