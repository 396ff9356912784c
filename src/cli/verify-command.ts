import { readLines } from "../core/log/index.ts";
import type { Verification } from "../core/seal/index.ts";
import { differingGroups, isSealKey, verifyLog } from "../core/seal/index.ts";
import { readText } from "../io/files/index.ts";
import { inWords, words } from "../words/index.ts";
import { plainText } from "./plain-text.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { textTable } from "./text-table.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The options of `verify`. */
export interface VerifyArguments {
  /** Keys of hubs, as they show them. */
  readonly trust: readonly string[];
  /** A voice code that was read out elsewhere. */
  readonly code?: string;
  readonly json?: boolean;
}

/** `verify`: whether entries of a log were changed, taken out, put in or reordered since they were made ([SEL7]). */
export async function verifyCommand(
  file: string,
  { trust, code, json = false }: VerifyArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  for (const key of trust) {
    if (!isSealKey(key)) throw new UnusableInputError(words("cli/verify-no-key", { key: plainText(key) }));
  }
  const { entries, problems } = readLines(await readText(file));
  const found = verifyLog(entries, trust);
  if (!found) throw new UnusableInputError(words("cli/no-entries", { file }));
  const heard = code === undefined ? null : comparedWith(found, code);
  for (const { line, problem } of problems) {
    terminal.err(`${words("cli/verify-not-read", { file, line, why: inWords(problem) })}\n`);
  }
  terminal.out(json ? `${JSON.stringify(verifyDocument(found, heard), null, 2)}\n` : inLines(found, heard));
  const isSound = ["whole", "intact", "partly"].includes(found.verdict);
  return isSound ? EXIT.fine : EXIT.findings;
}

/** A code from elsewhere, held against this log: the groups, from 1, that differ from the code of all its entries; none where a checkpoint has it. */
interface Heard {
  readonly code: string;
  readonly differs: readonly number[];
  /** The number of entries that the code is of; `null` where it differs. */
  readonly entries: number | null;
}

function comparedWith({ code, entries, checkpoints }: Verification, typed: string): Heard {
  const differs = differingGroups(code, typed);
  if (differs === null) throw new UnusableInputError(words("cli/verify-no-code", { code: plainText(typed) }));
  const same =
    differs.length === 0
      ? { entries }
      : checkpoints.findLast((one) => one.code !== "" && differingGroups(one.code, typed)?.length === 0);
  return { code: typed, differs: same ? [] : differs, entries: same?.entries ?? null };
}

function verifyDocument(found: Verification, heard: Heard | null) {
  const { walk, verdict, sources, checkpoints, root, order, code, entries, findings } = found;
  return {
    walk,
    verdict,
    entries,
    sources,
    checkpoints,
    root,
    order,
    code,
    findings,
    ...(heard && { heard }),
  };
}

function inLines(found: Verification, heard: Heard | null): string {
  const { sources, checkpoints, findings, verdict } = found;
  const table = textTable(
    [
      { heading: words("cli/verify-source") },
      { heading: words("cli/verify-by") },
      { heading: words("cli/verify-verdict") },
      { heading: words("cli/verify-entries"), figures: true },
      { heading: words("cli/verify-sealed"), figures: true },
      { heading: words("cli/verify-behind"), figures: true },
    ],
    sources.map((one) => [
      plainText(one.source),
      one.by
        ? words("cli/verify-admitted", { name: plainText(one.by.name), role: plainText(one.by.role) })
        : "",
      words(`seal/verdict-${one.verdict}`),
      String(one.entries),
      String(one.sealed),
      String(one.behind),
    ]),
  );
  const lines = [
    words(`seal/log-${verdict}`),
    "",
    table,
    ...findings.map(({ kind, source, number }) =>
      number === null
        ? words("cli/verify-finding", { source: plainText(source), what: words(`seal/found-${kind}`) })
        : words("cli/verify-finding-at", {
            source: plainText(source),
            number,
            what: words(`seal/found-${kind}`),
          }),
    ),
    ...checkpoints.map((one) =>
      words("cli/verify-checkpoint", {
        code: one.code,
        by: plainText(one.by),
        entries: one.entries,
        state: words(`seal/checkpoint-${one.state}`),
        trust: words(one.trusted ? "seal/trusted" : "seal/not-trusted"),
      }),
    ),
    words("cli/verify-code", { entries: found.entries, code: found.code, root: found.root }),
    ...(heard ? [heardWords(heard)] : []),
    words("seal/proves-not"),
  ];
  return `${lines.join("\n")}\n`;
}

function heardWords({ entries, differs }: Heard): string {
  return entries === null
    ? words("cli/verify-differs", { groups: differs.map(String) })
    : words("cli/verify-same", { entries });
}
