import { deviceOf } from "../../core/log/index.ts";
import type { Amendment, Ledger } from "../../core/walk/index.ts";
import { StoredChoice } from "../session/index.ts";

const NONE: readonly string[] = [];

/** How many amendments a device remembers as seen; the oldest are let go. */
const MOST = 500;

/** The amendments that were seen on this device, whatever its role ([AMD4]). */
export const amendmentsSeenHere = new StoredChoice<readonly string[]>("tetherline.amendments.seen", NONE);

/** What tells an amendment from others. */
export const amendmentKey = ({ source, id }: Pick<Amendment, "source" | "id">): string => `${source} ${id}`;

/** Remembers on this device that an amendment was seen, or that what is said of it was put away. */
export function rememberSeen(amendment: Pick<Amendment, "source" | "id">): void {
  const key = amendmentKey(amendment);
  const others = amendmentsSeenHere.current().filter((one) => one !== key);
  amendmentsSeenHere.choose([...others, key].slice(-MOST));
}

/**
 * The amendments in force that were not seen on a device, in the order of the log. Its own count as seen, and those for
 * which it entered that they were.
 */
export function unseenAmendments(
  { amendments, amendmentsSeen }: Pick<Ledger, "amendments" | "amendmentsSeen">,
  device: string,
  seenHere: readonly string[],
): readonly Amendment[] {
  if (amendments.length === 0) return amendments;
  const seen = new Set([
    ...seenHere,
    ...amendmentsSeen.flatMap((one) =>
      deviceOf(one.source) === device ? [amendmentKey(one.amendment)] : [],
    ),
  ]);
  return amendments.filter((one) => deviceOf(one.source) !== device && !seen.has(amendmentKey(one)));
}
