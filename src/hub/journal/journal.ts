import { closeSync, openSync, writeSync } from "node:fs";
import { formatInstant, type Instant } from "../../core/units/index.ts";
import { message, SaidError, saidBy, words } from "../../words/index.ts";

/** What is written down of a hub's guard: names of walks and devices, never a code, a token or what entries say. */
export type JournalEvent =
  | { readonly event: "started" | "ended"; readonly epoch: string }
  | { readonly event: "another-epoch"; readonly epoch: string }
  /** What the console was told. */
  | { readonly event: "told"; readonly words: string }
  | {
      readonly event: "joined";
      readonly walk: string;
      readonly device: string;
      readonly role: string;
      readonly address: string;
    }
  | { readonly event: "wrong-code" | "too-many" | "other-name"; readonly address: string }
  | {
      /** A name that belongs to another key or device was asked for. */
      readonly event: "name-refused";
      readonly walk: string;
      readonly device: string;
      readonly why: string;
      readonly address: string;
    }
  | { readonly event: "token-ended"; readonly walk: string; readonly device: string }
  | {
      /** Entries without seals were taken. */
      readonly event: "unsealed";
      readonly walk: string;
      readonly device: string;
      /** How many of a batch. */
      readonly entries: number;
    }
  | {
      /** Something was asked for that the asker may not do or see, or by a page of elsewhere; the same once a minute. */
      readonly event: "forbidden";
      readonly walk: string | null;
      /** `null` for the hub's owner, and for nobody who is known. */
      readonly device: string | null;
      readonly why: string;
      readonly address: string;
    }
  | {
      readonly event: "invited";
      readonly walk: string;
      readonly role: string;
      readonly devices: number;
      /** The device of the lead who did it; `null` for the hub's owner. */
      readonly by: string | null;
      readonly address: string;
    }
  | {
      readonly event: "invitation-ended";
      readonly walk: string;
      readonly by: string | null;
      readonly address: string;
    }
  | {
      readonly event: "withdrawn";
      readonly walk: string;
      /** `null` for everybody but the one who did it. */
      readonly device: string | null;
      readonly by: string | null;
      readonly address: string;
    }
  | {
      readonly event: "refused";
      readonly walk: string;
      readonly device: string | null;
      /** How many entries of a batch, by reason. */
      readonly reasons: Readonly<Record<string, number>>;
    };

/** Where a hub writes down who came in, who was turned away and what was refused. */
export interface Journal {
  note(event: JournalEvent): void;
  /** Begins the file anew under its name, after somebody has moved it away. */
  reopen(): void;
  close(): void;
}

/** The journal of a hub that keeps none. */
export const NO_JOURNAL: Journal = { note: () => {}, reopen: () => {}, close: () => {} };

/** The journal cannot be opened; the message is for the owner of the hub. */
export class JournalTroubleError extends SaidError {
  override readonly name = "JournalTroubleError";
}

/**
 * A journal of JSON lines, appended to a file of this user alone. Throws {@link JournalTroubleError} when the file cannot be opened. Once
 * it is open, a failure to write is told once, to `tell`, and stops nothing.
 */
export function openJournal(path: string, now: () => Instant, tell: (words: string) => void): Journal {
  const open = (): number => {
    try {
      return openSync(path, "a", 0o600);
    } catch (cause) {
      throw new JournalTroubleError(message("hub/journal-unusable", { path, why: saidBy(cause) }), { cause });
    }
  };
  let file: number | null = open();
  let isTold = false;
  const inTrouble = (work: () => void): void => {
    try {
      work();
      isTold = false;
    } catch (cause) {
      if (!isTold) tell(words("hub/journal-unusable", { path, why: saidBy(cause) }));
      isTold = true;
    }
  };
  return {
    note: (event) =>
      inTrouble(() => {
        file ??= open();
        writeSync(file, `${JSON.stringify({ time: formatInstant(now()), ...event })}\n`);
      }),
    reopen: () =>
      inTrouble(() => {
        if (file !== null) closeSync(file);
        file = null;
        file = open();
      }),
    close: () => {
      if (file !== null) closeSync(file);
      file = null;
    },
  };
}
