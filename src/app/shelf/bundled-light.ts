import type { RecordedLight } from "../../core/plan/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { parseInstant } from "../../core/units/index.ts";

/** The orbits beside the procedures that come with the app. Each is a chunk of its own, loaded when it is asked for. */
const orbits = import.meta.glob<string>("../../../procedures/*.orbit.txt", {
  query: "?raw",
  import: "default",
});

/** The starts that procedures/README.md gives for these orbits. */
const STARTS: Readonly<Record<string, string>> = {
  "osier-ranging-head": "2031-04-02T09:00:00Z",
};

/** An orbit that comes with a procedure, and the start it was made for. */
export interface BundledLight {
  readonly light: RecordedLight;
  readonly start: Instant | null;
}

const known = new Map<string, Promise<BundledLight | null>>();

/**
 * The orbit that comes with a procedure of the app, by the procedure's id, whatever its revision; `null` when none does.
 * The same object each time. Rejects when it cannot be loaded, and may then be asked for again.
 */
export function bundledLight(procedure: string): Promise<BundledLight | null> {
  const kept = known.get(procedure);
  if (kept) return kept;
  const found = loaded(procedure);
  known.set(procedure, found);
  found.catch(() => known.delete(procedure));
  return found;
}

async function loaded(procedure: string): Promise<BundledLight | null> {
  const path = Object.keys(orbits).find(
    (one) => one.replace(/^.*\//, "").replace(".orbit.txt", "") === procedure,
  );
  const load = path === undefined ? undefined : orbits[path];
  if (!load) return null;
  return { light: { orbit: await load() }, start: parseInstant(STARTS[procedure] ?? "") };
}
