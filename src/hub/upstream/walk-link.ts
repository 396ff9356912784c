import type { Backoff, Cursor, FarHub, FarSide, LinkTime } from "../../core/link/index.ts";
import { Link } from "../../core/link/index.ts";
import type { Said } from "../../words/index.ts";
import { inWords, message } from "../../words/index.ts";
import type { BeyondBoard } from "../beyond/index.ts";
import { NearWalk, type NearWalkParts } from "./near-walk.ts";

/** What the link of one walk with another hub is made of. */
export interface WalkLinkParts extends NearWalkParts {
  readonly side: FarSide;
  /** What people call the other hub. */
  readonly farName: string;
  readonly board: BeyondBoard;
  readonly time: LinkTime;
  /** Writes down which key the other hub has, as it says. */
  readonly vouch: (hub: string, key: string) => void;
  /** Says over there how far this hub has read; rejects when it did not get through. */
  readonly seen: (cursor: Cursor) => Promise<void>;
}

/** The link of one walk with another hub. */
export interface WalkLink {
  /** Resolves with what the other hub said once it has turned this one away. */
  readonly turnedAway: Promise<string>;
  stop(): Promise<void>;
}

/** Attempts are at most 30 s apart, so that no window of contact is missed. */
export const GAP_BACKOFF: Backoff = { first: 1_000, longest: 30_000 };
/** The longest time that an answer may take, in ms; how long one is waited for follows how long answers do take. */
export const LONGEST_ANSWER = 30 * 60_000;
/** How often the state of the link is told, at most, in ms. */
const TELL_PAUSE = 1_000;
/** How often a mere sign of life is told, in ms. */
const LIFE_PAUSE = 10_000;

/** Begins to keep a walk in agreement with another hub. */
export async function startWalkLink(parts: WalkLinkParts): Promise<WalkLink> {
  const { walk, farName, board, time, later, now } = parts;
  const near = await NearWalk.open(parts);
  const seen = seenReporter(parts);
  const link = new Link({
    near: {
      outbox: (limit) => near.outbox(limit),
      unsent: () => near.unsent(),
      settle: (settled) => near.settle(settled),
      cursor: () => near.cursor(),
      watch: (onChange) => near.watch(onChange),
      takeIn: async (entries, cursor) => {
        await near.takeIn(entries, cursor);
        seen.report(cursor);
      },
    },
    far: parts.side,
    time,
    settings: { backoff: GAP_BACKOFF, answer: { first: 15_000, longest: LONGEST_ANSWER } },
  });
  let isStopped = false;
  let shown: FarHub | null = null;
  let shownAt = 0;
  let vouched: string | null = null;
  let cancel: (() => void) | null = null;
  let turnAway: (words: string) => void = () => {};
  const turnedAway = new Promise<string>((resolve) => {
    turnAway = resolve;
  });

  const tell = async (): Promise<void> => {
    const { kind, words, trouble, heardAt, hello } = link.status();
    const { count, words: refusal } = near.refusals;
    const refused = count === 0 ? null : message("far/entries-refused", { count, why: refusal ?? "" });
    const [unsent, sentUpTo] = [await near.unsent(), await near.sentUpTo()];
    if (isStopped) return;
    if (hello && hello.hubKey !== null && hello.hubKey !== vouched) {
      vouched = hello.hubKey;
      parts.vouch(hello.hub, vouched);
    }
    const next: FarHub = {
      name: hello?.name ?? farName,
      state: kind === "ended" ? "refused" : kind,
      sentUpTo,
      unsent,
      heardAt,
      words: textOf(kind === "ended" ? words : (trouble ?? refused)),
    };
    const isNews = shown === null || newsOf(next) !== newsOf(shown);
    if (isNews || now() - shownAt >= LIFE_PAUSE) {
      [shown, shownAt] = [next, now()];
      board.put(walk, [next]);
    }
    if (kind === "ended") turnAway(textOf(words) ?? "");
  };
  const tellSoon = (): void => {
    if (isStopped || cancel) return;
    cancel = later(shown === null ? 0 : TELL_PAUSE, () => {
      cancel = null;
      // What keeps it from being told is the store's trouble, which others tell.
      tell().catch(() => {});
    });
  };

  const unwatch = link.watch(tellSoon);
  tellSoon();
  link.start();
  return {
    turnedAway,
    stop: async () => {
      isStopped = true;
      unwatch();
      cancel?.();
      seen.stop();
      await link.stop();
    },
  };
}

/** What is shown to people at the other end of a stream, in words. */
const textOf = (said: Said | null): string | null => (said === null ? null : inWords(said));

/** The parts of a link's state that are told at once when they change, as a text to compare. */
function newsOf({ heardAt: _heardAt, sentUpTo, ...news }: FarHub): string {
  // With nothing unsent the time goes on with the clock.
  return JSON.stringify({ ...news, sentUpTo: news.unsent === 0 ? "all" : sentUpTo });
}

/** Tells the other hub how far this one has read: one request at a time, always with the latest cursor, and again when a request failed. */
function seenReporter({ seen, later }: Pick<WalkLinkParts, "seen" | "later">) {
  let [next, isBusy]: [Cursor | null, boolean] = [null, false];
  let isStopped = false;
  let cancel: () => void = () => {};
  const go = async (): Promise<void> => {
    const cursor = next;
    next = null;
    const isSaid =
      cursor === null ||
      (await seen(cursor).then(
        () => true,
        () => false,
      ));
    if (isStopped) return;
    if (!isSaid) next ??= cursor;
    if (next === null) isBusy = false;
    else cancel = later(isSaid ? TELL_PAUSE : GAP_BACKOFF.longest, () => void go());
  };
  return {
    report: (cursor: Cursor): void => {
      next = cursor;
      if (isBusy || isStopped) return;
      isBusy = true;
      cancel = later(0, () => void go());
    },
    stop: (): void => {
      isStopped = true;
      cancel();
    },
  };
}

/** The state of a walk that has no link yet. */
export function unlinkedHub(name: string, unsent: number, refusal: string | null): FarHub {
  return {
    name,
    state: refusal === null ? "linking" : "refused",
    sentUpTo: null,
    unsent,
    heardAt: null,
    words: refusal,
  };
}
