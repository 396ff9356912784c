import { WALK } from "../engine/written-notes.ts";

/** Keys of all entries that a hub has, in their order. */
export async function keptLog(address: string, token: string): Promise<readonly string[]> {
  const answer = await fetch(`${address}/api/walks/${WALK}/entries`, {
    headers: { authorization: `Bearer ${token}` },
  });
  if (!answer.ok) throw new Error(`the log is not given: ${answer.status}`);
  return (await answer.text())
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => {
      const { source, id } = JSON.parse(line) as { source: string; id: string };
      return `${source} ${id}`;
    });
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
