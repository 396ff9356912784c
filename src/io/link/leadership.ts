import { aborted } from "../../core/link/index.ts";

/** The part of the Web Locks API (W3C) that is used. */
export interface Locks {
  request(
    name: string,
    options: { readonly signal?: AbortSignal; readonly steal?: boolean },
    whileHeld: () => Promise<void>,
  ): Promise<unknown>;
}

/** The wish of a page to do something that only one page of a device does at a time. */
export interface Candidacy {
  /** Takes over from whichever page does it: this one is being looked at, the other may be asleep. */
  takeOver(): void;
  /** Gives the wish up for good. */
  end(): void;
}

/**
 * Calls `lead` whenever this page becomes the one that leads, with a signal that is aborted when it stops being so. Without locks, or
 * where the browser grants none, each page acts as the leader, which costs traffic but does no harm.
 */
export function stand(locks: Locks | null, name: string, lead: (signal: AbortSignal) => void): Candidacy {
  const ended = new AbortController();
  if (!locks) {
    lead(ended.signal);
    return { takeOver: () => {}, end: () => ended.abort() };
  }
  let isLeading = false;
  let queued = new AbortController();

  const ask = (steal: boolean): void => {
    const term = new AbortController();
    const mine = new AbortController();
    queued = mine;
    const termOver = AbortSignal.any([term.signal, ended.signal]);
    const queueOver = AbortSignal.any([mine.signal, ended.signal]);
    let isGranted = false;
    let isDenied = false;
    const whileHeld = async () => {
      isGranted = true;
      if (ended.signal.aborted) return;
      isLeading = true;
      lead(termOver);
      await aborted(termOver);
    };
    locks
      .request(name, steal ? { steal: true } : { signal: queueOver }, whileHeld)
      .catch((error: unknown) => {
        // Otherwise it was taken over by another page, or is no longer wanted.
        isDenied = !isGranted && !(error instanceof Error && error.name === "AbortError");
      })
      .finally(() => {
        term.abort();
        if (queued !== mine) return;
        isLeading = isDenied;
        if (ended.signal.aborted) return;
        // Do not ask again: the browser would deny it at once, and this would loop forever.
        if (isDenied) lead(ended.signal);
        else ask(false);
      });
  };
  ask(false);
  return {
    takeOver: () => {
      if (isLeading || ended.signal.aborted) return;
      const waiting = queued;
      ask(true);
      waiting.abort();
    },
    end: () => ended.abort(),
  };
}
