import type { WalkId } from "../../../src/core/units/index.ts";
import type { Engine, StoredEntry } from "../../../src/hub/engine/index.ts";

/** All entries of a walk, page by page. */
export async function readAll(engine: Engine, walk: WalkId): Promise<readonly StoredEntry[]> {
  const all: StoredEntry[] = [];
  for (;;) {
    const page = await engine.read(walk, all.at(-1)?.offset ?? 0, 20_000);
    if (page.length === 0) return all;
    all.push(...page);
  }
}
