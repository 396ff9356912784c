import { setTimeout as wait } from "node:timers/promises";
import type { SigningKey } from "../../../src/core/link/index.ts";
import { joinText, pushAnswerSchema } from "../../../src/core/link/index.ts";
import type { WireEntry } from "../../../src/core/log/index.ts";
import { keyOf } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { WALK } from "../engine/written-notes.ts";
import { newKey } from "../keyed-device.ts";
import { SealingDevice } from "../sealed-notes.ts";
import type { EntryParts } from "../written-entry.ts";

const CLOSING: EntryParts = { type: "tetherline.walk.closed", data: { end: "complete" } };

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
  /** Closes the walk, after the writing was ended. */
  close(): Promise<void>;
}

/** A device that is in. */
export interface JoinedDevice {
  readonly device: string;
  readonly key: SigningKey;
  readonly token: string;
}

/** Lets a device in as lead, with the owner's code and a key of its own. */
export async function join(address: string, ownerCode: string, device: string): Promise<JoinedDevice> {
  const key = newKey();
  const ask = async (path: string, body: object) => {
    const answer = await fetch(address + path, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ code: ownerCode, device, walk: WALK, ...body }),
    });
    return (await answer.json()) as { challenge?: string; token?: string };
  };
  const { challenge = "" } = await ask("/api/join/challenge", {});
  const { host } = new URL(address);
  const signature = await key.sign(joinText({ challenge, walk: WALK, device, host }));
  const proof = { key: key.publicKey, challenge, host, signature };
  const { token } = await ask("/api/join", { name: device, role: "lead", proof });
  if (!token) throw new Error(`${device} was not let in`);
  return { device, key, token };
}

/** Begins to write, in batches of 1 to 5 sealed entries, to whichever address is said then. */
export function startWriting(addresses: () => string, { device, key, token }: JoinedDevice): WritingDevice {
  const confirmed = new Set<string>();
  const offered = new Set<string>();
  const sealing = new SealingDevice(device, key);
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
      for (const { source, id, outcome } of pushAnswerSchema().parse(said).results) {
        if (outcome === "refused") throw new Error(`${source} ${id} was refused`);
        confirmed.add(`${source} ${id}`);
      }
      return true;
    } catch (failure) {
      if (failure instanceof Error && failure.message.endsWith("was refused")) throw failure;
      return false;
    }
  };

  const write = async (batch: readonly WireEntry[]): Promise<void> => {
    for (const wire of batch) offered.add(keyOf({ wire }));
    while (!(await offer(JSON.stringify(batch)))) {
      failures += 1;
      await wait(20);
    }
  };

  const writing = (async () => {
    while (!isStopping) {
      number += 1;
      await write(await sealing.notes(1 + (number % 5), { at: Date.now() as Instant }));
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
    close: async () => write([await sealing.write({ ...CLOSING, at: Date.now() as Instant })]),
  };
}
