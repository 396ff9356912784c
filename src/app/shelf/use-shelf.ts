import { useEffect, useState } from "react";
import { LIBRARY } from "../../core/library/index.ts";
import type { DeviceStore, WalkCard } from "../../io/store/index.ts";
import { words } from "../../words/index.ts";
import { bundledProcedures } from "./bundled-procedures.ts";
import { keepProcedures, keepWalks, type ListedWalk, lastProcedures, lastWalks } from "./last-shelf.ts";
import type { ProcedureFacts } from "./procedure-facts.ts";
import type { ProcedureSummary } from "./procedure-summary.ts";
import { listedSummary, summaryOf } from "./procedure-summary.ts";

/** A walk on the shelf: its card, or only what was listed of it last while its card is not read. */
export type ShelfWalk = WalkCard | ListedWalk;

/**
 * The content of the shelf. Until the store was read it is what was listed last where the app begins with the shelf, and
 * `null` where other pages came before it, which may have changed what there is to list.
 */
export interface Shelf {
  readonly procedures: readonly ProcedureSummary[] | null;
  readonly walks: readonly ShelfWalk[] | null;
  /** Why something could not be loaded; `null` when everything was. */
  readonly problem: string | null;
}

const FIRST = { running: 0, held: 0, prepared: 1, closed: 2 } as const;

/** Running walks first, then prepared ones, then closed ones, each in the order of the store. */
function inOrder(walks: readonly WalkCard[]): readonly WalkCard[] {
  return walks.toSorted((a, b) => FIRST[a.phase] - FIRST[b.phase]);
}

/** Those that were brought in come before those that come with the app. */
const withBundled = (imported: readonly ProcedureSummary[]): readonly ProcedureSummary[] => [
  ...imported,
  ...bundledProcedures.map(({ key, facts }) => summaryOf({ key, isImported: false }, facts)),
];

/** The content of this device's shelf, kept up to date from the moment at which its store is there. */
export function useShelf(store: DeviceStore | null): Shelf {
  const [procedures, setProcedures] = useState<Shelf["procedures"]>(() =>
    store ? null : withBundled(lastProcedures().map(listedSummary)),
  );
  const [walks, setWalks] = useState<Shelf["walks"]>(() => (store ? null : lastWalks()));
  const [problem, setProblem] = useState<string | null>(null);
  useEffect(() => {
    if (!store) return;
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
      if (isOver) return;
      setProcedures(withBundled(imported));
      keepProcedures(imported);
    };
    const lookUpWalks = async () => {
      const cards = inOrder((await store.log.walks()).filter(({ walk }) => walk !== LIBRARY));
      if (isOver) return;
      setWalks(cards);
      keepWalks(cards);
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
