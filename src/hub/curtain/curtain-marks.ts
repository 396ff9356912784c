import { deviceOf, tellsOfSurprise } from "../../core/log/index.ts";
import type { StoredEntry } from "../engine/index.ts";

/** The types that tell where the curtain of a walk is; texts are looked through for them before any is parsed. */
const TELLING = /"type":"(tetherline\.(?:walk\.(?:opened|closed|reopened)|surprise\.[a-z.]+))"/;

/** What an entry is to the curtain; `null` for one that does not matter to it. */
export function markIn({ text }: StoredEntry): "opened" | "closed" | "reopened" | "surprise" | null {
  if (!TELLING.test(text)) return null;
  // What somebody wrote may look like a type.
  const { type } = JSON.parse(text) as { readonly type: string };
  if (tellsOfSurprise(type)) return "surprise";
  if (type === "tetherline.walk.opened") return "opened";
  if (type === "tetherline.walk.closed") return "closed";
  return type === "tetherline.walk.reopened" ? "reopened" : null;
}

/** Where the curtain of one walk went up and down, and what is behind it, by the offsets of its log. */
export class CurtainMarks {
  /** Few: a walk is closed once, or a few times. */
  readonly #turns = new Map<number, "closed" | "reopened">();
  readonly #surprises = new Set<number>();
  #opening: { readonly offset: number; readonly device: string; readonly isRehearsal: boolean } | null = null;
  /** The offset up to which the log was looked through. */
  seen = 0;

  /** Takes account of entries; those that were before change nothing. */
  note(entries: readonly StoredEntry[]): void {
    for (const entry of entries) {
      const mark = markIn(entry);
      if (mark === "opened") this.#noteOpening(entry);
      else if (mark === "surprise") this.#surprises.add(entry.offset);
      else if (mark !== null) this.#turns.set(entry.offset, mark);
    }
  }

  /** Whether entries of surprises are kept from a device: the one that opened the walk plays its crew, and needs them. */
  hides(device: string): boolean {
    return this.#opening?.isRehearsal === true && this.#opening.device !== device;
  }

  /** Whether the walk was closed where an entry stands in its log. */
  isClosedAt(offset: number): boolean {
    let [last, isClosed] = [-1, false];
    for (const [at, turn] of this.#turns) {
      if (at < offset && at > last) [last, isClosed] = [at, turn === "closed"];
    }
    return isClosed;
  }

  /** The offsets of what the closing at an offset lets be seen, in order. */
  behind(closing: number): readonly number[] {
    if (this.isClosedAt(closing)) return [];
    // What came while it was closed before was seen then, and what came earlier at that closing.
    let since = 0;
    for (const [at, turn] of this.#turns) if (turn === "reopened" && at < closing && at > since) since = at;
    return [...this.#surprises].filter((at) => at > since && at < closing).sort((a, b) => a - b);
  }

  #noteOpening({ offset, text }: StoredEntry): void {
    if (this.#opening && this.#opening.offset <= offset) return;
    const { source, data } = JSON.parse(text) as {
      readonly source: string;
      readonly data?: { readonly mode?: unknown };
    };
    this.#opening = { offset, device: deviceOf(source), isRehearsal: data?.mode === "rehearsal" };
  }
}
