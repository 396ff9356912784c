import type { WalkId } from "../../core/units/index.ts";
import type { StoredEntry } from "./engine.ts";

interface Written {
  length: number;
  readonly sequences: string[];
}

/** How much each source of each walk wrote, for an engine that reads its log from the beginning anyway. */
export class SourceBook {
  readonly #walks = new Map<WalkId, Map<string, Written>>();

  add(walk: WalkId, { source, sequence, text }: StoredEntry): void {
    const sources = this.#walks.get(walk) ?? new Map<string, Written>();
    this.#walks.set(walk, sources);
    const written = sources.get(source) ?? { length: 0, sequences: [] };
    sources.set(source, written);
    written.length += text.length;
    written.sequences.push(sequence);
  }

  /** In characters, of a device and what is below it, or of all. */
  lengthOf(walk: WalkId, device: string | null): number {
    let length = 0;
    for (const [source, written] of this.#walks.get(walk) ?? []) {
      if (device === null || source === device || source.startsWith(`${device}/`)) length += written.length;
    }
    return length;
  }

  sequencesOf(walk: WalkId, source: string): readonly string[] {
    return [...(this.#walks.get(walk)?.get(source)?.sequences ?? [])];
  }
}
