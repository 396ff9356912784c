import { readLines } from "../../core/log/index.ts";
import type { ExtractMade } from "../../core/seal/index.ts";
import { chosenBy, extractOf, verifyLog, writeExtract } from "../../core/seal/index.ts";
import type { ExtractTold, SealRequest, SealTold } from "./seal-request.ts";

/** Progress is told at most so many times. */
const STEPS = 100;

/** Answers a request, and tells how far it is meanwhile. */
export function sealAnswersTo(request: SealRequest, tell: (told: SealTold) => void): void {
  const { entries } = readLines(request.log);
  if (request.kind === "extract") {
    tell({ kind: "extract", made: extractTold(extractOf(entries, chosenBy(request.choice))) });
    return;
  }
  const { trust, isQuick } = request;
  const every = Math.max(1, Math.ceil(entries.length / STEPS));
  const onProgress = (done: number, of: number) => {
    if (done % every === 0) tell({ kind: "progress", done, of });
  };
  tell({ kind: "verified", found: verifyLog(entries, trust, { isQuick, onProgress }) });
}

function extractTold(made: ExtractMade): ExtractTold {
  if (made.kind !== "made") return made;
  const { kind, extract, chosen, leftOut } = made;
  return { kind, text: writeExtract(extract), chosen, leftOut };
}
