import { setTimeout as wait } from "node:timers/promises";
import { pushAnswerSchema } from "../../../src/core/link/index.ts";
import { keyOf } from "../../../src/core/log/index.ts";
import { note, WALK } from "../engine/written-notes.ts";

/** A device that writes as fast as it is answered, and again what was not answered. */
export interface WritingDevice {
  /** Keys of the entries that a hub said it has. */
  readonly confirmed: ReadonlySet<string>;
  /** Keys of all entries that were offered. */
  readonly offered: ReadonlySet<string>;
  /** Requests that failed. */
  readonly failures: () => number;
  /** Ends it once all that was offered is confirmed. */
  stop(): Promise<void>;
}

/** Lets a device in as lead, with the owner's code. */
export async function join(address: string, ownerCode: string, device: string): Promise<string> {
  const answer = await fetch(`${address}/api/join`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ code: ownerCode, device, name: device, walk: WALK, role: "lead" }),
  });
  const { token } = (await answer.json()) as { token?: string };
  if (!token) throw new Error(`${device} was not let in: ${answer.status}`);
  return token;
}

/** Begins to write, in batches of 1 to 5 entries, to whichever address is said then. */
export function startWriting(addresses: () => string, token: string, device: string): WritingDevice {
  const confirmed = new Set<string>();
  const offered = new Set<string>();
  let [number, failures, isStopping] = [0, 0, false];

  const offer = async (body: string): Promise<boolean> => {
    try {
      const answer = await fetch(`${addresses()}/api/walks/${WALK}/entries`, {
        method: "POST",
        headers: { authorization: `Bearer ${token}`, "content-type": "application/cloudevents-batch+json" },
        body,
        signal: AbortSignal.timeout(20_000),
      });
      const said: unknown = await answer.json();
      if (!answer.ok) return false;
      for (const { source, id, outcome } of pushAnswerSchema.parse(said).results) {
        if (outcome === "refused") throw new Error(`${source} ${id} was refused`);
        confirmed.add(`${source} ${id}`);
      }
      return true;
    } catch (failure) {
      if (failure instanceof Error && failure.message.endsWith("was refused")) throw failure;
      return false;
    }
  };

  const writing = (async () => {
    while (!isStopping) {
      const batch = Array.from({ length: 1 + (number % 5) }, () => {
        number += 1;
        return note({ source: device, number, text: `${device} saw ${number}` });
      });
      for (const entry of batch) offered.add(keyOf(entry));
      const body = JSON.stringify(batch.map(({ wire }) => wire));
      while (!(await offer(body))) {
        failures += 1;
        await wait(20);
      }
    }
  })();

  return {
    confirmed,
    offered,
    failures: () => failures,
    stop: async () => {
      isStopping = true;
      await writing;
    },
  };
}
