import type { WalkId } from "../../core/units/index.ts";
import type { StoredEntry } from "./engine.ts";

interface Written {
  length: number;
  /** The other hub through which something of it came. */
  via: string | null;
  readonly sequences: string[];
}

/** How much each source of each walk wrote, for an engine that reads its log from the beginning anyway. */
export class SourceBook {
  readonly #walks = new Map<WalkId, Map<string, Written>>();

  add(walk: WalkId, { source, sequence, text, via }: StoredEntry): void {
    const sources = this.#walks.get(walk) ?? new Map<string, Written>();
    this.#walks.set(walk, sources);
    const written = sources.get(source) ?? { length: 0, via: null, sequences: [] };
    sources.set(source, written);
    written.length += text.length;
    written.via ??= via;
    written.sequences.push(sequence);
  }

  /** In characters, of a device and what is below it, or of all. */
  lengthOf(walk: WalkId, device: string | null): number {
    return this.#below(walk, device).reduce((length, written) => length + written.length, 0);
  }

  /** The other hub through which something of a device, or of what is below it, came; `null` when nothing did. */
  cameThrough(walk: WalkId, device: string): string | null {
    return this.#below(walk, device).find(({ via }) => via !== null)?.via ?? null;
  }

  sequencesOf(walk: WalkId, source: string): readonly string[] {
    return [...(this.#walks.get(walk)?.get(source)?.sequences ?? [])];
  }

  #below(walk: WalkId, device: string | null): readonly Written[] {
    return [...(this.#walks.get(walk) ?? [])]
      .filter(([source]) => device === null || source === device || source.startsWith(`${device}/`))
      .map(([, written]) => written);
  }
}
