import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

/** When the walk would finish, with its margin, in a sentence. */
export function wouldFinish({
  finish,
  margin,
}: {
  readonly finish: Duration | null;
  readonly margin: Duration | null;
}): string {
  if (finish === null) return words("forecast/none-with-it");
  if (margin === null) return words("forecast/finish", { finish });
  return words(margin < 0 ? "forecast/finish-over" : "forecast/finish-margin", { finish, margin });
}
