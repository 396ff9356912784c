import { maySurprise } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { Member } from "../admission/index.ts";
import type { Engine, StoredEntry } from "../engine/index.ts";
import { CurtainMarks, markIn } from "./curtain-marks.ts";
import type { Sight } from "./sight.ts";

const PAGE = 500;

/**
 * Keeps surprises from those who follow a rehearsal until it is closed, and then sends them right before the closing ([TRN2]): they
 * have places in the log before cursors that readers hold by then, so that nobody would read them otherwise.
 */
export class SurpriseCurtain {
  readonly #engine: Engine;
  readonly #walks = new Map<WalkId, CurtainMarks>();
  readonly #stop: () => void;

  constructor(engine: Engine) {
    this.#engine = engine;
    // Offsets of another epoch are of another log.
    this.#stop = engine.onEpoch(() => this.#walks.clear());
  }

  /** What a member sees of a walk; `null` for those who see all of it: a trainer, another hub, the owner of this one. */
  sightOf(walk: WalkId, member: Member | null): Sight | null {
    if (member === null || member.role === "relay" || maySurprise(member.role)) return null;
    const { device } = member;
    return {
      isPlain: (kept) =>
        !kept.some((entry) => {
          const mark = markIn(entry);
          return mark === "surprise" || mark === "closed";
        }),
      of: (page) => this.#seenOf(walk, device, page),
    };
  }

  close(): void {
    this.#stop();
  }

  async #seenOf(walk: WalkId, device: string, page: readonly StoredEntry[]): Promise<readonly StoredEntry[]> {
    if (page.every((entry) => markIn(entry) === null)) return page;
    const marks = await this.#marksUpTo(walk, page.at(-1)?.offset ?? 0);
    if (!marks.hides(device)) return page;
    const seen: StoredEntry[] = [];
    for (const entry of page) {
      const mark = markIn(entry);
      if (mark === "surprise" && !marks.isClosedAt(entry.offset)) continue;
      if (mark === "closed") seen.push(...(await this.#entriesAt(walk, marks.behind(entry.offset))));
      seen.push(entry);
    }
    return seen;
  }

  async #entriesAt(walk: WalkId, offsets: readonly number[]): Promise<readonly StoredEntry[]> {
    const found: StoredEntry[] = [];
    for (const offset of offsets) {
      const [entry] = await this.#engine.read(walk, offset - 1, 1);
      if (entry?.offset === offset) found.push(entry);
    }
    return found;
  }

  /** The marks of a walk, its log looked through as far as an offset. */
  async #marksUpTo(walk: WalkId, offset: number): Promise<CurtainMarks> {
    const marks = this.#walks.get(walk) ?? new CurtainMarks();
    this.#walks.set(walk, marks);
    while (marks.seen < offset) {
      const page = await this.#engine.read(walk, marks.seen, PAGE);
      const last = page.at(-1);
      if (!last) break;
      marks.note(page);
      marks.seen = Math.max(marks.seen, last.offset);
    }
    return marks;
  }
}
