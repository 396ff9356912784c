import { walksAnswersTo } from "../../../src/app/learn/walks-answers-to.ts";
import type { Renamed, WalksTold } from "../../../src/app/learn/walks-request.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import { writeLines } from "../../../src/core/log/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";

/** Everything that walks tell of a file, as the worker answers it in the end. */
export function toldBy(
  file: ProcedureFile,
  logs: readonly (readonly Entry[])[],
  renamed: Renamed = {},
): WalksTold {
  const answers = [...walksAnswersTo({ file, logs: logs.map((entries) => writeLines(entries)), renamed })];
  const last = structuredClone(answers.at(-1));
  if (!last) throw new RangeError("the file is no procedure");
  return last;
}
