import type { Entry } from "../../core/log/index.ts";
import { mergeEntries, readLines } from "../../core/log/index.ts";
import type { ExtractMade, PlatformFits } from "../../core/seal/index.ts";
import {
  chosenBy,
  extractOf,
  readExtract,
  SealLooks,
  verifyExtract,
  verifyLog,
  verifyLogBy,
  writeExtract,
} from "../../core/seal/index.ts";
import type { ExtractRead, ExtractTold, LogPiece, SealQuestion, SealTold } from "./seal-request.ts";

/** Progress is told at most so many times. */
const STEPS = 50;

/** Takes a log piece by piece, and answers a question about it. */
export class SealAnswer {
  readonly #question: SealQuestion;
  readonly #tell: (told: SealTold) => void;
  readonly #platform: PlatformFits | null;
  #looks: SealLooks | null;
  #entries: Entry[] = [];
  /** What was given of the file of an extract. */
  #file = "";

  /**
   * `platform` looks at signatures, `null` where the platform has no such signatures: they are then looked at here, which
   * takes longer.
   */
  constructor(question: SealQuestion, tell: (told: SealTold) => void, platform: PlatformFits | null) {
    this.#question = question;
    this.#tell = tell;
    this.#platform = platform;
    this.#looks = platform && new SealLooks(platform);
  }

  /** Takes a piece in; where every seal is to be looked at, that begins. Resolves when there is room for the next. */
  async take(piece: LogPiece): Promise<void> {
    if (piece === null) {
      this.#entries = [];
      this.#looks = this.#platform && new SealLooks(this.#platform);
      return;
    }
    if (this.#question.kind === "verify-extract") {
      this.#file += piece;
      return;
    }
    const { entries } = readLines(piece);
    for (const entry of entries) this.#entries.push(entry);
    const isFull = this.#question.kind === "verify" && !this.#question.isQuick;
    if (isFull) await this.#looks?.add(entries);
  }

  /** Answers once all pieces are there, and tells how far it is meanwhile. Rejects when the platform does. */
  async give(): Promise<void> {
    if (this.#question.kind === "verify-extract") {
      this.#tell({ kind: "extract-verified", read: extractRead(this.#file, this.#question.trust) });
      return;
    }
    const entries = mergeEntries(this.#entries).ordered;
    if (this.#question.kind === "extract") {
      const made = extractOf(entries, chosenBy(this.#question.choice));
      this.#tell({ kind: "extract", made: extractTold(made) });
      return;
    }
    const { trust, isQuick } = this.#question;
    let told = 0;
    const onProgress = (done: number, of: number) => {
      const step = Math.floor((done * STEPS) / Math.max(1, of));
      if (step === told) return;
      told = step;
      this.#tell({ kind: "progress", done, of });
    };
    const how = { isQuick, onProgress };
    const found = this.#looks
      ? await verifyLogBy(this.#looks, entries, trust, how)
      : verifyLog(entries, trust, how);
    this.#tell({ kind: "verified", found });
  }
}

function extractRead(text: string, trust: readonly string[]): ExtractRead {
  const { extract, problems } = readExtract(text) ?? { extract: null, problems: [] };
  return {
    found: extract && verifyExtract(extract, trust),
    entries: extract?.entries.map(({ entry }) => entry) ?? [],
    problems,
  };
}

function extractTold(made: ExtractMade): ExtractTold {
  if (made.kind !== "made") return made;
  const { kind, extract, chosen, leftOut } = made;
  return { kind, text: writeExtract(extract), chosen, leftOut };
}
