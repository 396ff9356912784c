import { useMemo, useState } from "react";
import { keyOf } from "../../core/log/index.ts";
import type { Duration, WalkId } from "../../core/units/index.ts";
import type { Folded } from "../../core/walk/index.ts";
import { overruledOf } from "../../core/walk/index.ts";
import type { LinkStatus } from "../../io/link/index.ts";
import { inWords, words } from "../../words/index.ts";
import type { Notice } from "../follow/index.ts";
import { useServices } from "../session/index.ts";
import { overruledWords } from "./overruled-words.ts";
import { keepTold, toldKeys } from "./told.ts";

/** The notices about the link for the reader of this device, and how they are dismissed. */
export interface Notices {
  readonly notices: readonly Notice[];
  readonly putAway: (key: string) => void;
}

/**
 * What the reader would not see otherwise: jumps of this device's clock, marks that did not count, and entries that were
 * stamped again or set aside.
 */
export function useNotices(walk: WalkId, folded: Folded, link: LinkStatus): Notices {
  const { links } = useServices();
  const [told, setTold] = useState(toldKeys);
  const overruled = useMemo(() => {
    const { ledger } = folded;
    if (!ledger) return [];
    return overruledOf(folded, link.device).map((one) => ({
      key: `${walk} ${one.key}`,
      words: overruledWords(one, ledger.inForce.outline, ledger.opened.procedure.outline),
    }));
  }, [walk, folded, link.device]);
  const jumps = useMemo(
    () =>
      folded.jumps
        .filter(({ device }) => device === link.device)
        .map(({ by, entry }) => ({
          key: `${walk} ${keyOf(entry)}`,
          words: words(by < 0 ? "link/clock-set-back" : "link/clock-set-ahead", {
            by: Math.abs(by) as Duration,
          }),
        })),
    [walk, folded, link.device],
  );
  return {
    notices: [
      ...jumps.filter(({ key }) => !told.has(key)),
      ...link.notices.map(({ key, words }) => ({ key, words: inWords(words) })),
      ...overruled.filter(({ key }) => !told.has(key)),
    ],
    putAway: (key) => {
      if (link.notices.some((notice) => notice.key === key)) links.dismiss(walk, key);
      else setTold(keepTold(key));
    },
  };
}
