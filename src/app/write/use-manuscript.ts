import type { RefObject } from "react";
import { useCallback, useEffect, useRef, useState } from "react";
import { TextMemory } from "../../core/changes/index.ts";
import type { Change } from "../../core/procedure/index.ts";
import type { GestureName, Manuscript, Proposal, Stepped } from "../../core/write/index.ts";
import { gestureOn, manuscriptFrom, manuscriptOf, redone, typedOn, undone } from "../../core/write/index.ts";
import { troubleMessage } from "../../io/store/index.ts";
import type { Message } from "../../words/index.ts";
import { useServices } from "../session/index.ts";
import { procedureText } from "../shelf/index.ts";
import type { Keeping } from "./manuscript-keeper.ts";
import { ManuscriptKeeper } from "./manuscript-keeper.ts";
import { scrollerOf } from "./page-scroll.ts";

/** A manuscript on the screen, and what can be done with it. */
export interface OpenManuscript {
  /** Its key on this device. */
  readonly name: string;
  readonly manuscript: Manuscript;
  /** Where it is shown, so that undo brings the scroll back. */
  readonly shownIn: RefObject<HTMLElement | null>;
  readonly keeping: Keeping;
  /** The rows that are selected. */
  readonly rows: readonly string[];
  readonly select: (rows: readonly string[]) => void;
  /** Why the last gesture was not possible; `null` when it was. */
  readonly problem: Message | null;
  /** Makes a gesture; `from` is how far the page was scrolled when it began, in px, where that is not as it is now. */
  readonly make: (name: GestureName, proposal: Proposal, from?: number) => boolean;
  /** A gesture that selects nothing else. */
  readonly change: (name: GestureName, changes: readonly Change[]) => boolean;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly type: (text: string) => void;
  /** Gives the manuscript a revision, as a gesture, and returns its text then; `null` when that is not possible. */
  readonly revised: (revision: string) => string | null;
  /** Decides between this page and another one that wrote the same manuscript. */
  readonly decide: (keep: "mine" | "theirs") => void;
}

/** What a page that opens a manuscript has: it, or why there is none. */
export type Opening =
  | { readonly kind: "opening" | "missing" | "unreadable" }
  | { readonly kind: "open"; readonly open: OpenManuscript };

interface State {
  readonly manuscript: Manuscript;
  readonly rows: readonly string[];
  readonly problem: Message | null;
}

/**
 * A manuscript by its key on this device; where there is none, one that is begun with the procedure of that key on the shelf. It is kept
 * after every gesture.
 */
export function useManuscript(key: string): Opening {
  const { store } = useServices();
  const [state, setState] = useState<State | "missing" | "unreadable" | null>(null);
  const [keeping, setKeeping] = useState<Keeping>({ kind: "kept" });
  const keeper = useRef<ManuscriptKeeper | null>(null);
  const shownIn = useRef<HTMLElement | null>(null);
  const memory = useRef(new TextMemory());
  // The state as it is now, for handlers that run before the next drawing.
  const now = useRef<State | null>(null);

  const scrolled = useCallback(() => shownIn.current && scrollerOf(shownIn.current), []);
  const show = useCallback((next: State, keep: boolean) => {
    now.current = next;
    setState(next);
    if (keep) keeper.current?.keep(next.manuscript);
  }, []);

  useEffect(() => {
    let isOver = false;
    const open = async () => {
      const shelf = await store.manuscripts();
      const row = await shelf.manuscript(key);
      const text = row ? row.manuscript.text : await procedureText(store, key);
      if (isOver) return;
      if (text === null) return setState("missing");
      const manuscript = row ? manuscriptFrom(row.manuscript) : manuscriptOf(text);
      if (!manuscript) return setState("unreadable");
      const begun = { key, from: row ? row.from : key, version: row?.version ?? 0 };
      keeper.current = new ManuscriptKeeper(shelf, begun, (told) => {
        if (!isOver) setKeeping(told);
      });
      show({ manuscript, rows: [], problem: null }, false);
    };
    open().catch(() => {
      if (!isOver) setState("missing");
    });
    return () => {
      isOver = true;
    };
  }, [store, key, show]);

  const make = useCallback(
    (name: GestureName, proposal: Proposal, from?: number): boolean => {
      const before = now.current;
      if (!before) return false;
      if (proposal.problem) {
        show({ ...before, problem: proposal.problem }, false);
        return false;
      }
      const scroll = scrolled()?.scrollTop ?? 0;
      const about = {
        name,
        before: { rows: before.rows, scroll: from ?? scroll },
        after: { rows: proposal.rows, scroll },
      };
      const written = gestureOn(before.manuscript, proposal.changes, about, memory.current);
      if (written.problem) {
        show({ ...before, problem: written.problem }, false);
        return false;
      }
      const isChanged = written.manuscript !== before.manuscript;
      show({ manuscript: written.manuscript, rows: proposal.rows, problem: null }, isChanged);
      return true;
    },
    [show, scrolled],
  );

  const change = useCallback(
    (name: GestureName, changes: readonly Change[]) =>
      make(name, { changes, rows: now.current?.rows ?? [], problem: null }),
    [make],
  );

  const stepTo = useCallback(
    (stepped: Stepped | null) => {
      if (!stepped) return;
      const { manuscript, anchor } = stepped;
      show({ manuscript, rows: anchor.rows, problem: null }, true);
      requestAnimationFrame(() => scrolled()?.scrollTo({ top: anchor.scroll }));
    },
    [show, scrolled],
  );
  const undo = useCallback(() => stepTo(now.current && undone(now.current.manuscript)), [stepTo]);
  const redo = useCallback(() => stepTo(now.current && redone(now.current.manuscript)), [stepTo]);

  const type = useCallback(
    (text: string) => {
      const before = now.current;
      if (!before) return;
      const anchor = { rows: before.rows, scroll: scrolled()?.scrollTop ?? 0 };
      show({ ...before, manuscript: typedOn(before.manuscript, text, anchor) }, true);
    },
    [show, scrolled],
  );

  const select = useCallback(
    (rows: readonly string[]) => {
      if (now.current) show({ ...now.current, rows, problem: null }, false);
    },
    [show],
  );

  const revised = useCallback(
    (revision: string) =>
      change("set", [{ head: { revision } }]) ? (now.current?.manuscript.text ?? null) : null,
    [change],
  );

  const decide = useCallback(
    (keep: "mine" | "theirs") => {
      const before = now.current;
      if (keeping.kind !== "overtaken" || !before) return;
      const theirs = keep === "theirs" ? manuscriptFrom(keeping.by.manuscript) : null;
      if (theirs) show({ manuscript: theirs, rows: [], problem: null }, false);
      keeper.current?.keepOver(theirs ?? before.manuscript, keeping.by);
    },
    [keeping, show],
  );

  if (state === null) return { kind: "opening" };
  if (state === "missing" || state === "unreadable") return { kind: state };
  return {
    kind: "open",
    open: { ...state, name: key, shownIn, keeping, select, make, change, undo, redo, type, revised, decide },
  };
}

/** Why nothing is kept, for the reader. */
export const keepingTrouble = (keeping: Keeping): Message | null =>
  keeping.kind === "not-kept" && keeping.reason !== null ? troubleMessage(keeping.reason) : null;
