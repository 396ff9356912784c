import { useMemo, useState } from "react";
import { handoverOf } from "../../core/review/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { later } from "../../core/units/index.ts";
import { walkStateAt } from "../../core/walk/index.ts";
import { useMissingWalk } from "../link/index.ts";
import { HandoverSheet } from "../print/index.ts";
import { ownClockOffset, useServices, useWalkSession } from "../session/index.ts";
import { markedInText, TextsContext, useFoldedTexts } from "../texts/index.ts";

/**
 * The page for somebody who takes over a walk. It is made when it is opened, whenever the log grows, and when asked. A
 * rehearsal is told as of its last entry. The document is outside Ionic's pages, so that it prints in full.
 */
export function HandoverPage({ walk }: { readonly walk: string }) {
  const { now, store } = useServices();
  const { folded: entered, isRead, problem } = useWalkSession(walk as WalkId);
  const { folded, texts } = useFoldedTexts(entered, markedInText);
  const { said } = useMissingWalk({ walk: walk as WalkId, isRead, problem, isThere: folded.ledger !== null });
  const [asked, setAsked] = useState(now);
  const handover = useMemo(() => {
    const { ledger, lastAt } = folded;
    if (!ledger) return null;
    const present = later(Math.max(asked, now()) as typeof asked, ownClockOffset(folded, store.device));
    return handoverOf(
      walkStateAt(ledger, ledger.opened.mode === "live" ? present : (lastAt ?? present)),
      folded,
    );
  }, [folded, asked, now, store.device]);
  if (!handover) {
    return (
      <main className="page-message" role="status">
        <p>{said}</p>
      </main>
    );
  }
  return (
    <TextsContext value={texts}>
      <HandoverSheet
        handover={handover}
        device={store.device}
        onAgain={() => setAsked(now())}
        onPaper={() => window.location.assign(`/print-paper/${encodeURIComponent(walk)}`)}
        onFollow={() => window.location.assign(`/follow/${encodeURIComponent(walk)}`)}
      />
    </TextsContext>
  );
}
