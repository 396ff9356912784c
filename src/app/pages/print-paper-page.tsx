import { useState } from "react";
import type { WalkId } from "../../core/units/index.ts";
import { later } from "../../core/units/index.ts";
import { walkStateAt } from "../../core/walk/index.ts";
import { useMissingWalk } from "../link/index.ts";
import { PrintSheet } from "../print/index.ts";
import { ownClockOffset, useServices, useWalkSession } from "../session/index.ts";
import { TextsContext, useLedgerTexts } from "../texts/index.ts";

/**
 * The paper procedure of a walk, filled in as the walk stands when the page is opened, for going on with on paper. A
 * rehearsal is told as of its last entry.
 */
export function PrintPaperPage({ walk }: { readonly walk: string }) {
  const { now, store } = useServices();
  const { folded, isRead, problem } = useWalkSession(walk as WalkId);
  const { said } = useMissingWalk({ walk: walk as WalkId, isRead, problem, isThere: folded.ledger !== null });
  const [opened] = useState(now);
  const { lastAt } = folded;
  const { ledger, texts } = useLedgerTexts(folded.ledger);
  if (!ledger) {
    return (
      <main className="page-message" role="status">
        <p>{said}</p>
      </main>
    );
  }
  // Entries that come in while the page is open are told of as well, and they are later than its opening.
  const present = later(opened, ownClockOffset(folded, store.device));
  const at = lastAt !== null && (ledger.opened.mode === "rehearsal" || lastAt > present) ? lastAt : present;
  const state = walkStateAt(ledger, at);
  return (
    <TextsContext value={texts}>
      <PrintSheet
        outline={ledger.inForce.outline}
        plan={state.plan}
        printedAt={at}
        walk={{ state, device: store.device }}
      />
    </TextsContext>
  );
}
