import { HubClient, hubFarSide } from "../../src/core/link/index.ts";
import { type Entry, readLines } from "../../src/core/log/index.ts";
import type { WalkId } from "../../src/core/units/index.ts";
import { foldLog } from "../../src/core/walk/index.ts";
import { fetchHub, TABLET_MANNER } from "../../src/io/link/fetch-hub.ts";
import { waited } from "../../src/io/link/timers.ts";

/** What a newcomer took, in ms, from asking until its state was there, and how many entries it read. */
export interface NewcomerReport {
  readonly stream: number;
  readonly lines: number;
  readonly entries: readonly [stream: number, lines: number];
}

/** A device that never saw the walk, in a process of its own so that nothing is warm: `hub-newcomer <origin> <walk> <token>`. */
const [origin = "", walk = "", token = ""] = process.argv.slice(2);

/** As the app does. */
async function overStream(): Promise<readonly Entry[]> {
  const hub = new HubClient({
    ask: fetchHub({ fetch, origin, token: null, wait: waited }),
    manner: TABLET_MANNER,
  });
  const over = new AbortController();
  const entries: Entry[] = [];
  let toCome = 0;
  await hubFarSide(hub, walk as WalkId, { credential: token })
    .follow(
      null,
      (message) => {
        if (message.kind === "hello") toCome = message.hello.toCome ?? toCome;
        if (message.kind === "entry") entries.push(message.entry);
        if (message.kind === "cursor" && entries.length >= toCome) over.abort();
      },
      over.signal,
    )
    .catch((cause: unknown) => {
      if (!over.signal.aborted) throw cause;
    });
  return entries;
}

async function inLines(): Promise<readonly Entry[]> {
  const answer = await fetch(`${origin}/api/walks/${walk}/entries`, {
    headers: { authorization: `Bearer ${token}` },
  });
  return readLines(await answer.text()).entries;
}

/** How long it takes until the state is there, and from how many entries. */
async function took(read: () => Promise<readonly Entry[]>): Promise<readonly [time: number, count: number]> {
  const began = performance.now();
  const entries = await read();
  const { ledger } = foldLog(entries);
  const time = performance.now() - began;
  if (!ledger) throw new Error("the log does not fold");
  return [time, entries.length];
}

const [stream, streamed] = await took(overStream);
const [lines, lined] = await took(inLines);
process.send?.({ stream, lines, entries: [streamed, lined] } satisfies NewcomerReport, () => process.exit());
