import { createContext, use } from "react";
import type { Instant } from "../../core/units/index.ts";
import type { RevisionNote } from "../../io/store/index.ts";

/** A procedure that was just taken off the shelf, and can be put back as it was. */
export interface TakenOff {
  readonly title: string;
  readonly text: string;
  readonly importedAt: Instant;
  readonly saved?: RevisionNote;
}

/** What was done on the shelf since the app was started. */
export interface ShelfNews {
  /** The result of the last action, in sentences. */
  readonly message: readonly string[];
  /** The procedure that was taken off last; `null` for none. */
  readonly takenOff: TakenOff | null;
}

export const NO_NEWS: ShelfNews = { message: [], takenOff: null };

type SetNews = (change: (news: ShelfNews) => ShelfNews) => void;

/** Thrown when the shelf is drawn outside the provider, which is a bug in this program. */
export class NoShelfNewsError extends Error {
  override readonly name = "NoShelfNewsError";
}

/** Passes down the news, which stay while the shelf goes over from the first screen to the frame of the pages. */
export const ShelfNewsContext = createContext<readonly [ShelfNews, SetNews] | null>(null);

/** The news, and what changes them. */
export function useShelfNews(): readonly [ShelfNews, SetNews] {
  const news = use(ShelfNewsContext);
  if (!news) throw new NoShelfNewsError("no news were provided above this part");
  return news;
}
