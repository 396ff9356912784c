import { useEffect, useState } from "react";
import { LIBRARY } from "../../core/library/index.ts";
import type { WalkCard } from "../../io/store/index.ts";
import { words } from "../../words/index.ts";
import { useServices } from "../session/index.ts";
import { bundledProcedures } from "./bundled-procedures.ts";
import type { ProcedureFacts } from "./procedure-facts.ts";
import type { ProcedureSummary } from "./procedure-summary.ts";
import { summaryOf } from "./procedure-summary.ts";

/** The content of the shelf; a part is `null` while it is being loaded. */
export interface Shelf {
  readonly procedures: readonly ProcedureSummary[] | null;
  readonly walks: readonly WalkCard[] | null;
  /** Why something could not be loaded; `null` when everything was. */
  readonly problem: string | null;
}

const FIRST = { running: 0, held: 0, prepared: 1, closed: 2 } as const;

/** Running walks first, then prepared ones, then closed ones, each in the order of the store. */
function inOrder(walks: readonly WalkCard[]): readonly WalkCard[] {
  return walks.toSorted((a, b) => FIRST[a.phase] - FIRST[b.phase]);
}

/** The content of this device's shelf, kept up to date. */
export function useShelf(): Shelf {
  const { store } = useServices();
  const [procedures, setProcedures] = useState<readonly ProcedureSummary[] | null>(null);
  const [walks, setWalks] = useState<readonly WalkCard[] | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  useEffect(() => {
    let isOver = false;
    // By text, since a key is free again once its procedure was taken off the shelf.
    const known = new Map<string, ProcedureFacts>();
    const failed = (error: unknown) => {
      if (!isOver) setProblem(error instanceof Error ? error.message : words("shelf/message-unknown"));
    };
    const lookUpProcedures = async () => {
      const kept = await store.shelf.procedures();
      // The checker is a chunk of its own, which only a procedure that somebody brought in needs.
      const checker = kept.some(({ text }) => !known.has(text)) ? await import("./procedure-facts.ts") : null;
      const imported = kept.flatMap(({ key, text }) => {
        const facts = known.get(text) ?? checker?.factsOf(text);
        if (!facts) return [];
        known.set(text, facts);
        return summaryOf({ key, isImported: true }, facts);
      });
      const summaries = [
        ...imported,
        ...bundledProcedures.map(({ key, facts }) => summaryOf({ key, isImported: false }, facts)),
      ];
      if (!isOver) setProcedures(summaries);
    };
    const lookUpWalks = async () => {
      const cards = await store.log.walks();
      if (!isOver) setWalks(inOrder(cards.filter(({ walk }) => walk !== LIBRARY)));
    };
    const again = (lookUp: () => Promise<void>) => () => {
      void lookUp().catch(failed);
    };
    const ends = [
      store.shelf.watchProcedures(again(lookUpProcedures)),
      store.log.watchWalks(again(lookUpWalks)),
    ];
    again(lookUpWalks)();
    again(lookUpProcedures)();
    return () => {
      isOver = true;
      for (const end of ends) end();
    };
  }, [store]);
  return { procedures, walks, problem };
}
