import { connect } from "node:net";
import { fc } from "@fast-check/vitest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sized } from "../machine/test-size.ts";
import {
  malformedAddresses,
  malformedBytes,
  malformedCredentials,
  malformedCursors,
  malformedForms,
} from "./malformed.ts";
import { KEPT, malformedBatches } from "./malformed-entries.ts";
import type { Credentials, Malformed } from "./malformed-request.ts";
import { TestHub, WALK } from "./test-hub.ts";
import { writtenNotes } from "./written-entry.ts";

/** How many are sent at once, and in how many groups. */
const GROUP = 50;
const requests = (count: number) => ({ numRuns: Math.ceil(count / GROUP), verbose: 0 as const });
/** How many in all. */
const ALL = sized({ daily: 10_000, soak: 100_000 });

const DEVICE = "/devices/lead";
const unlimited = { perToken: 1e9, perAddress: 1e9, filesPerAddress: 1e9, wrongCodes: 1e9 };
let hub: TestHub;
let port: number;
let credentials: Credentials;
let before: string;
let sent = 0;

/** Everything that a request could have changed. */
async function kept(): Promise<string> {
  const { keep } = hub.engine;
  return JSON.stringify([
    await hub.engine.walks(),
    await hub.log(),
    await hub.engine.refused(WALK, 10),
    [...(await keep.list(""))].filter(([key]) => key !== "health").sort(),
  ]);
}

beforeAll(async () => {
  hub = await TestHub.open({ limits: unlimited });
  const lead = await hub.join(DEVICE);
  await hub.push(lead, writtenNotes(DEVICE, 1, KEPT));
  port = Number(new URL(await hub.listen()).port);
  credentials = { device: DEVICE, lead, owner: hub.owner };
  before = await kept();
});
afterAll(async () => {
  await hub.close();
  // Fewer would mean that a family was left out or cut short.
  expect(sent).toBeGreaterThanOrEqual(ALL);
});

/** Sends one; throws when it was not refused. */
async function refused({ request, refused: statuses }: Malformed): Promise<void> {
  const answer = await hub.hub.server.inject(request);
  if (!statuses.includes(answer.statusCode)) {
    throw new Error(
      `${answer.statusCode} ${answer.body.slice(0, 300)} to ${JSON.stringify(request).slice(0, 2000)}`,
    );
  }
  const said = answer.json<{ error?: unknown; words?: unknown; results?: { outcome: string }[] }>();
  const isRefusal =
    answer.statusCode === 200
      ? (said.results ?? []).every(({ outcome }) => outcome === "refused")
      : typeof said.error === "string" &&
        typeof said.words === "string" &&
        !/\bat .*:\d+:\d+|node_modules/.test(answer.body);
  if (!isRefusal)
    throw new Error(`${answer.body.slice(0, 300)} to ${JSON.stringify(request).slice(0, 2000)}`);
}

const families: readonly [string, number, (with_: Credentials) => fc.Arbitrary<Malformed>][] = [
  ["batches of entries", 0.25 * ALL, malformedBatches],
  ["tokens and cookies", 0.25 * ALL, malformedCredentials],
  ["cursors", 0.2 * ALL, malformedCursors],
  ["walks, devices and paths", 0.15 * ALL, malformedAddresses],
  ["joining and inviting", 0.13 * ALL, malformedForms],
];

const BYTES = 0.02 * ALL;

describe(`[HUB] of ${ALL} malformed requests none is accepted, none is a mistake of ours`, () => {
  it.each(families)("%s (%d)", { timeout: 120_000 }, async (_what, count, malformed) => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(malformed(credentials), { minLength: GROUP, maxLength: GROUP, size: "max" }),
        async (group) => {
          sent += group.length;
          await Promise.all(group.map(refused));
          expect(hub.told).toEqual([]);
        },
      ),
      requests(count),
    );
    expect(await kept()).toBe(before);
  });

  it(`bytes on a connection (${BYTES})`, { timeout: 120_000 }, async () => {
    let answered = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.array(malformedBytes(credentials), { minLength: GROUP, maxLength: GROUP, size: "max" }),
        async (group) => {
          sent += group.length;
          const answers = await Promise.all(group.map(answerTo));
          answered += answers.filter((answer) => answer !== "").length;
          for (const [index, answer] of answers.entries()) {
            if (answer !== "" && !/^HTTP\/1\.1 4\d\d /.test(answer)) {
              throw new Error(
                `${answer.slice(0, 300)} to ${JSON.stringify(group[index]?.toString("latin1")).slice(0, 500)}`,
              );
            }
          }
          expect(hub.told).toEqual([]);
        },
      ),
      requests(BYTES),
    );
    // What is waited for in vain is the lesser part.
    expect(answered).toBeGreaterThan(BYTES / 2);
    expect((await hub.ask("GET", "/api/health")).statusCode).toBe(200);
    expect(await kept()).toBe(before);
  });
});

/** What comes back for some bytes; empty when the server just hangs up, or waits for more. */
function answerTo(bytes: Buffer): Promise<string> {
  return new Promise((resolve) => {
    let answer = "";
    const socket = connect(port, "127.0.0.1");
    socket.on("data", (chunk) => {
      answer += chunk.toString("latin1");
      socket.destroy();
    });
    socket.once("error", () => {});
    socket.once("close", () => resolve(answer));
    socket.once("end", () => socket.destroy());
    socket.write(bytes);
    // A server that waits for more is told that there is none.
    setTimeout(() => socket.end(), 50);
  });
}
