import type { Outline } from "../../core/procedure/index.ts";
import type { Overruled } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { actorsText } from "../follow/index.ts";

/** Tells the author of a mark that did not count what happened to it. `opened` is the procedure of record. */
export function overruledWords(
  { step, lost, stands, by }: Overruled,
  outline: Outline,
  opened: Outline,
): string {
  const entry = outline.step(step) ?? opened.step(step);
  const who = by === null ? words("link/another-device") : actorsText([{ actor: by }], outline.crew);
  const named = { number: entry?.number ?? step, step: entry?.step.do ?? step, who };
  if (stands === "settled") return words("link/overruled-settled", named);
  if (stands === "dropped") return words("link/overruled-dropped", named);
  if (stands === "open")
    return words("link/overruled-asked-again", { number: named.number, step: named.step });
  return words(lost === "done" ? "link/overruled-done" : "link/overruled-skip", named);
}
