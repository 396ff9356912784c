import { readLines } from "../../core/log/index.ts";
import type { ExtractMade, PlatformFits } from "../../core/seal/index.ts";
import { chosenBy, extractOf, verifyLog, verifyLogBy, writeExtract } from "../../core/seal/index.ts";
import type { ExtractTold, SealRequest, SealTold } from "./seal-request.ts";

/** Progress is told at most so many times. */
const STEPS = 100;

/**
 * Answers a request, and tells how far it is meanwhile. `platform` looks at signatures, `null` where the platform has no
 * such signatures: they are then looked at here, which takes longer.
 */
export async function sealAnswersTo(
  request: SealRequest,
  tell: (told: SealTold) => void,
  platform: PlatformFits | null,
): Promise<void> {
  const { entries } = readLines(request.log);
  if (request.kind === "extract") {
    tell({ kind: "extract", made: extractTold(extractOf(entries, chosenBy(request.choice))) });
    return;
  }
  const { trust, isQuick } = request;
  let told = 0;
  const onProgress = (done: number, of: number) => {
    const step = Math.floor((done * STEPS) / Math.max(1, of));
    if (step === told) return;
    told = step;
    tell({ kind: "progress", done, of });
  };
  const how = { isQuick, onProgress };
  const found = platform ? await verifyLogBy(platform, entries, trust, how) : verifyLog(entries, trust, how);
  tell({ kind: "verified", found });
}

function extractTold(made: ExtractMade): ExtractTold {
  if (made.kind !== "made") return made;
  const { kind, extract, chosen, leftOut } = made;
  return { kind, text: writeExtract(extract), chosen, leftOut };
}
