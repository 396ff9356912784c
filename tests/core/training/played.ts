import type { Draft } from "../../../src/core/log/index.ts";
import type { Surprise } from "../../../src/core/training/index.ts";
import { firedDraft, laidDrafts, surprisedCrew } from "../../../src/core/training/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import { nextPlayedMove, type PlayedTimes } from "../../../src/core/walk/index.ts";
import { LogWriter, minute, ZERO } from "../log-writer.ts";
import { FILE } from "./surprise-builder.ts";

const WALK = "walk-1" as WalkId;

/** Every step takes its likely time, so that what a surprise does stands alone. */
const LIKELY: PlayedTimes = ({ whereabouts }, { index }) => {
  const time = whereabouts.times[index]?.likely;
  if (time === undefined) throw new Error("a step without a time");
  return time;
};

const enterAll = (log: LogWriter, drafts: readonly Draft[]) => {
  for (const { name, data, at, actor } of drafts)
    log.enter(name, data as never, (at - ZERO) / 60_000, { actor });
};

/** What somebody enters while the crew is played, at a minute. */
export type Meanwhile = readonly [at: number, act: (log: LogWriter) => void];

/** Enters the firing of a surprise by hand. */
export const fire =
  (one: Surprise | undefined, at: number): Meanwhile[1] =>
  (log) => {
    if (one) enterAll(log, [firedDraft(one, { walk: WALK, at: minute(at), actor: "trainer" })]);
  };

/** Plays the walk of {@link FILE} with surprises that are laid, and what people enter meanwhile, to its end. */
export function played(
  laid: readonly Surprise[],
  meanwhile: readonly Meanwhile[] = [],
  { mode = "rehearsal" as const, closes = true }: { mode?: "live" | "rehearsal"; closes?: boolean } = {},
): LogWriter {
  const log = LogWriter.opened(FILE, { mode });
  enterAll(log, laidDrafts(laid, { walk: WALK, at: ZERO, actor: "trainer" }));
  log.enter("clock.started", {}, 0);
  const waiting = [...meanwhile];
  for (let moves = 0; moves < 1000; moves += 1) {
    const { ledger, lastAt } = log.folded;
    if (!ledger || lastAt === null) throw new Error("the walk was not opened");
    const crew = surprisedCrew(ledger, LIKELY);
    const move = nextPlayedMove(ledger, crew?.times ?? LIKELY, lastAt, crew?.turns);
    const [next] = waiting;
    if (next && (!move || minute(next[0]) <= move.at)) {
      next[1](log);
      waiting.shift();
      continue;
    }
    if (!move) break;
    enterAll(log, move.drafts);
  }
  const { lastAt } = log.folded;
  if (closes) log.enter("walk.closed", { end: "complete" }, ((lastAt ?? ZERO) - ZERO) / 60_000);
  return log;
}

/** When a step was done, in minutes of PET; `null` when it was not. */
export const doneAt = (log: LogWriter, step: string): number | null => {
  const finish = log.ledger.steps.get(step as never)?.finish as Instant | null | undefined;
  return finish == null ? null : (finish - ZERO) / 60_000;
};
