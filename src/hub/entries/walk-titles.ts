import { readEntry } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { Engine } from "../engine/index.ts";

/** A walk is opened by its first entry; after a merge of two devices others may stand before it. */
const LOOKED_THROUGH = 50;
const LONGEST = 200;

/** What the walks of a hub are called: the titles of their procedures, as the entries that opened them have them. */
export class WalkTitles {
  readonly #engine: Engine;
  /** `null` for a walk that has none where it is looked for: entries never change. */
  readonly #found = new Map<WalkId, string | null>();

  constructor(engine: Engine) {
    this.#engine = engine;
  }

  /** The title of a walk, cut to 200 characters; `null` while no entry gives one. */
  async of(walk: WalkId): Promise<string | null> {
    const found = this.#found.get(walk);
    if (found !== undefined) return found;
    let [looked, after] = [0, 0];
    while (looked < LOOKED_THROUGH) {
      const page = await this.#engine.read(walk, after, LOOKED_THROUGH - looked);
      const last = page.at(-1);
      if (!last) return null;
      [looked, after] = [looked + page.length, last.offset];
      for (const { text } of page) {
        const fact = readEntry(JSON.parse(text)).entry?.read.fact;
        const title = fact?.name === "walk.opened" ? titleOf(fact.procedure) : null;
        if (title === null) continue;
        this.#found.set(walk, title);
        return title;
      }
    }
    this.#found.set(walk, null);
    return null;
  }
}

function titleOf(procedure: unknown): string | null {
  if (typeof procedure !== "object" || procedure === null || !("title" in procedure)) return null;
  const { title } = procedure;
  return typeof title === "string" && title.trim() !== "" ? title.trim().slice(0, LONGEST) : null;
}
