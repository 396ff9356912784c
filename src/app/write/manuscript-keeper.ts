import type { Manuscript } from "../../core/write/index.ts";
import { keptOf } from "../../core/write/index.ts";
import type { ManuscriptRow, ManuscriptShelf, StoreTrouble } from "../../io/store/index.ts";

/** Whether what is written is on the device. */
export type Keeping =
  | { readonly kind: "kept" }
  | { readonly kind: "keeping" }
  /** Another page wrote in between. Nothing more is kept until somebody decides. */
  | { readonly kind: "overtaken"; readonly by: ManuscriptRow }
  | { readonly kind: "not-kept"; readonly reason: StoreTrouble | null };

/** What a keeper needs of the shelf. */
export type KeepingShelf = Pick<ManuscriptShelf, "keepManuscript">;

/**
 * Keeps a manuscript on the device, one writing at a time: while one is under way only the latest that arrives waits ([WRT1]). What
 * another page wrote is never written over unasked.
 */
export class ManuscriptKeeper {
  readonly #shelf: KeepingShelf;
  readonly #row: Pick<ManuscriptRow, "key" | "from">;
  readonly #onKeeping: (keeping: Keeping) => void;
  #version: number;
  #waiting: Manuscript | null = null;
  #isBusy = false;

  /** `version` is the one that the page read; 0 for a manuscript that is not kept yet. */
  constructor(
    shelf: KeepingShelf,
    row: Pick<ManuscriptRow, "key" | "from" | "version">,
    onKeeping: (keeping: Keeping) => void,
  ) {
    this.#shelf = shelf;
    this.#row = row;
    this.#version = row.version;
    this.#onKeeping = onKeeping;
  }

  /** Keeps a manuscript as soon as the one before it is kept. */
  keep(manuscript: Manuscript): void {
    this.#waiting = manuscript;
    if (!this.#isBusy) void this.#next();
  }

  /** Keeps a manuscript over what another page wrote, which its writer has seen and decided. */
  keepOver(manuscript: Manuscript, other: Pick<ManuscriptRow, "version">): void {
    this.#version = other.version;
    this.keep(manuscript);
  }

  async #next(): Promise<void> {
    this.#isBusy = true;
    this.#onKeeping({ kind: "keeping" });
    let last: Keeping = { kind: "kept" };
    while (this.#waiting) {
      const manuscript = this.#waiting;
      this.#waiting = null;
      last = await this.#keepNow(manuscript);
      if (last.kind !== "kept") break;
    }
    this.#isBusy = false;
    this.#onKeeping(last);
  }

  async #keepNow(manuscript: Manuscript): Promise<Keeping> {
    const { title } = manuscript.file;
    try {
      const kept = await this.#shelf.keepManuscript(
        { ...this.#row, title, manuscript: keptOf(manuscript) },
        this.#version,
      );
      if (kept.kind === "kept") this.#version = kept.version;
      return kept.kind === "kept" ? { kind: "kept" } : kept;
    } catch {
      return { kind: "not-kept", reason: null };
    }
  }
}
