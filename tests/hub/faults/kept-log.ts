import type { Verification } from "../../../src/core/seal/index.ts";
import { WALK } from "../engine/written-notes.ts";
import { verifiedLines } from "../sealed-notes.ts";

/** Keys of all entries that a hub has, in their order. */
export async function keptLog(address: string, token: string): Promise<readonly string[]> {
  return (await keptText(address, token))
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => {
      const { source, id } = JSON.parse(line) as { source: string; id: string };
      return `${source} ${id}`;
    });
}

/** Those of some keys that devices wrote. */
export const ofDevices = (log: readonly string[]): readonly string[] =>
  log.filter((key) => key.startsWith("/devices/"));

/** What the log that a hub has is worth to somebody who was given its key code. */
export async function verifiedLog(address: string, token: string): Promise<Verification> {
  const health = await fetch(`${address}/api/health`);
  const { key } = (await health.json()) as { key: string };
  return verifiedLines(await keptText(address, token), [key]);
}

async function keptText(address: string, token: string): Promise<string> {
  const answer = await fetch(`${address}/api/walks/${WALK}/entries`, {
    headers: { authorization: `Bearer ${token}` },
  });
  if (!answer.ok) throw new Error(`the log is not given: ${answer.status}`);
  return answer.text();
}

/** Those of the keys that a log lacks. */
export function missingFrom(log: readonly string[], keys: Iterable<string>): readonly string[] {
  const there = new Set(log);
  return [...keys].filter((key) => !there.has(key));
}

/** Those that a log has more than once. */
export function doubledIn(log: readonly string[]): readonly string[] {
  const seen = new Set<string>();
  return log.filter((key) => seen.size === seen.add(key).size);
}
