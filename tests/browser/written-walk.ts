import { readFileSync } from "node:fs";
import { playedWalk } from "../../src/cli/played-walk.ts";
import type { Entry, FactData, FactName, HybridTime } from "../../src/core/log/index.ts";
import { laterOf, stamp, writeLines } from "../../src/core/log/index.ts";
import type { ProcedureFile } from "../../src/core/procedure/index.ts";
import { readProcedure } from "../../src/core/procedure/index.ts";
import type { Duration, Instant, WalkId } from "../../src/core/units/index.ts";
import { later } from "../../src/core/units/index.ts";

/** The text of a procedure that comes with the app. */
export function bundledText(name: string): string {
  return readFileSync(`procedures/${name}.procedure.json`, "utf8");
}

/** A procedure file from its text, which must be a procedure. */
export function procedureFile(text: string): ProcedureFile {
  const { file, findings } = readProcedure(text);
  if (!file) throw new Error(`not a procedure: ${findings[0]?.code}`);
  return file;
}

/** The log of a walk as another device would have written it, to be imported: quicker than tapping where tapping is not the point. */
export class WrittenWalk {
  readonly walk: WalkId;
  readonly start: Instant;
  readonly #entries: Entry[] = [];
  readonly #source: string;
  #seen: HybridTime | null = null;
  #made = 0;

  /** Opens a walk whose clock is started at `start`, unless it is only to be prepared. */
  constructor(
    file: ProcedureFile,
    {
      start,
      walk = "written-walk",
      isStarted = true,
      source = "/devices/another-tablet",
    }: {
      readonly start: Instant;
      readonly walk?: string;
      readonly isStarted?: boolean;
      readonly source?: string;
    },
  ) {
    this.walk = walk as WalkId;
    this.start = start;
    this.#source = source;
    this.enter("walk.opened", { procedure: file, mode: "live" }, 0);
    if (isStarted) this.enter("clock.started", {}, 0);
  }

  /** One more entry, of something that happened so many minutes after the start. */
  enter<Name extends FactName>(name: Name, data: FactData<Name>, minutes: number): this {
    const at = later(this.start, Math.round(minutes * 60_000) as Duration);
    const draft = { name, data, at, actor: "iv" } as Parameters<typeof stamp>[0];
    const pen = { source: this.#source, made: this.#made, seen: this.#seen };
    const entry = stamp(draft, this.walk, pen, at);
    this.#made += 1;
    this.#seen = laterOf(this.#seen, entry.hlc);
    this.#entries.push(entry);
    return this;
  }

  /** Steps done, each at its minute. */
  done(...steps: readonly (readonly [step: string, minutes: number])[]): this {
    for (const [step, minutes] of steps) this.enter("step.done", { step }, minutes);
    return this;
  }

  get count(): number {
    return this.#entries.length;
  }

  /** JSON Lines. */
  get text(): string {
    return writeLines(this.#entries);
  }
}

/** A walk played by the program up to `until`, as a live one: JSON Lines. */
export function playedLog(
  file: ProcedureFile,
  { seed, start, until }: { readonly seed: number; readonly start: Instant; readonly until: Instant | null },
): { readonly walk: WalkId; readonly text: string } {
  const entries: Entry[] = [];
  for (const played of playedWalk(file, seed, start)) {
    if (until !== null && played.at > until) break;
    entries.push(...played.entries);
  }
  const [first] = entries;
  if (!first) throw new Error("nothing was played");
  return { walk: first.walk, text: writeLines(entries).replace('"mode":"rehearsal"', '"mode":"live"') };
}
