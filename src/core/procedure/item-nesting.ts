import { message } from "../../words/index.ts";
import { errorAt } from "./error-at.ts";
import type { Finding } from "./finding.ts";
import type { RawPart } from "./raw-file.ts";
import { member, textOf } from "./raw-file.ts";
import { idOf } from "./raw-step.ts";

/** An error for each item that is inside itself, directly or through other items, at the start or the end ([PRO8]). */
export function nestingFindings(items: readonly RawPart[], side: "start" | "end"): Finding[] {
  const within = new Map(
    items.flatMap((item) => {
      const holder = textOf(member(member(item, side), "item"));
      const id = idOf(item);
      return holder !== null && id !== null ? [[id, holder] as const] : [];
    }),
  );
  return items.flatMap((item) => {
    const first = idOf(item);
    if (first === null || !isInsideItself(within, first)) return [];
    const said = message("custody/inside-itself", { item: first });
    return [errorAt(member(item, side), "custody/inside-itself", said, { things: [first] })];
  });
}

function isInsideItself(within: ReadonlyMap<string, string>, first: string): boolean {
  const seen = new Set<string>();
  let holder = within.get(first);
  while (holder !== undefined && holder !== first && !seen.has(holder)) {
    seen.add(holder);
    holder = within.get(holder);
  }
  return holder === first;
}
