import type { WalkRecord } from "../core/learn/index.ts";
import { walkRecords } from "../core/learn/index.ts";
import type { Outline } from "../core/procedure/index.ts";
import { words } from "../words/index.ts";
import { plainText } from "./plain-text.ts";
import { foldedFile, procedureFile, reportUncleanLog } from "./read-input.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The walks in the logs of some files. */
export interface WalkLogs {
  /** Each walk once, in order of when they began. */
  readonly records: readonly WalkRecord[];
  /** The procedure that they are walks of: the one given, or the one that was walked last. */
  readonly outline: Outline;
  /** {@link EXIT.findings} when a log does not fold cleanly, which has been said. */
  readonly status: ExitStatus;
}

/**
 * Reads the walks in some logs, which must all be of one procedure. Rejects with an {@link UnusableInputError} that names the log of
 * another one ([LRN6]).
 */
export async function walkLogs(
  files: readonly string[],
  procedure: string | undefined,
  terminal: Terminal,
): Promise<WalkLogs> {
  const logs = [];
  for (const file of files) logs.push({ file, log: await foldedFile(file) });
  const records = walkRecords(logs.map(({ log }) => log.folded));
  const last = records.at(-1)?.ledger.opened.procedure.outline;
  const given = procedure === undefined ? last : (await procedureFile(procedure)).outline;
  if (!given) throw new NoWalkError();
  for (const { file, log } of logs) {
    const { id } = log.ledger.opened.procedure.outline.procedure;
    if (id !== given.procedure.id)
      throw new UnusableInputError(
        words("cli/other-procedure", {
          file: plainText(file),
          procedure: plainText(id),
          wanted: plainText(given.procedure.id),
        }),
      );
  }
  const statuses = logs.map(({ file, log }) => reportUncleanLog(file, log, terminal));
  return { records, outline: given, status: statuses.find((one) => one !== EXIT.fine) ?? EXIT.fine };
}

/** Every log that was folded has a walk: that there is none is a mistake of our own. */
class NoWalkError extends Error {
  override readonly name = "NoWalkError";
}
