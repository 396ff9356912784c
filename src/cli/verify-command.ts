import { readLines } from "../core/log/index.ts";
import type {
  ExtractVerified,
  HeardCode,
  ReadExtract,
  SealFinding,
  SourceVerified,
  Verification,
} from "../core/seal/index.ts";
import { heardCode, readExtract, sealFitsBy, spelled, verifyExtract, verifyLog } from "../core/seal/index.ts";
import { readText } from "../io/files/index.ts";
import { inWords, words } from "../words/index.ts";
import { documentText } from "./document-text.ts";
import { machineFits } from "./machine-fits.ts";
import { plainText } from "./plain-text.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { textTable } from "./text-table.ts";
import { trustedKeys } from "./trusted-keys.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The options of `verify`. */
export interface VerifyArguments {
  /** Keys of hubs, as they show them. */
  readonly trust: readonly string[];
  /** A voice code that was read out elsewhere. */
  readonly code?: string;
  /** True for one look a run of entries. */
  readonly quick?: boolean;
  readonly json?: boolean;
}

/** `verify`: whether entries of a log, or of an extract, were changed, taken out, put in or reordered since they were made ([SEL7]). */
export async function verifyCommand(
  file: string,
  { trust, code, quick = false, json = false }: VerifyArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const keys = trustedKeys(trust);
  const text = await readText(file);
  const read = readExtract(text);
  if (read) return ofExtract(file, read, { keys, code, json }, terminal);
  const { entries, problems } = readLines(text);
  const found = verifyLog(entries, keys, { isQuick: quick, fits: sealFitsBy(machineFits) });
  if (!found) throw new UnusableInputError(words("cli/no-entries", { file }));
  const heard = code === undefined ? null : heardBy(found, code);
  tellUnread(file, problems, terminal);
  terminal.out(
    json
      ? documentText(() => ({ ...found, ...(heard && { heard: { code, ...heard } }) }))
      : inLines(found, heard),
  );
  return statusOf(found);
}

interface OfExtract {
  readonly keys: readonly string[];
  readonly code: string | undefined;
  readonly json: boolean;
}

function ofExtract(
  file: string,
  { extract, problems }: ReadExtract,
  { keys, code, json }: OfExtract,
  terminal: Terminal,
): ExitStatus {
  tellUnread(file, problems, terminal);
  const found = extract && verifyExtract(extract, keys);
  if (!found) throw new UnusableInputError(words("cli/no-entries", { file }));
  const { checkpoint } = found;
  const heard = code === undefined || !checkpoint ? null : heardBy({ ...checkpoint, checkpoints: [] }, code);
  terminal.out(
    json
      ? documentText(() => ({ ...found, ...(heard && { heard: { code, ...heard } }) }))
      : extractInLines(found, heard),
  );
  return statusOf(found);
}

const statusOf = ({ verdict }: Pick<Verification, "verdict">): ExitStatus =>
  ["whole", "intact", "partly"].includes(verdict) ? EXIT.fine : EXIT.findings;

function tellUnread(file: string, problems: ReadExtract["problems"], terminal: Terminal): void {
  for (const { line, problem } of problems) {
    terminal.err(`${words("cli/verify-not-read", { file, line, why: inWords(problem) })}\n`);
  }
}

function heardBy(found: Parameters<typeof heardCode>[0], typed: string): HeardCode {
  const heard = heardCode(found, typed);
  if (!heard) throw new UnusableInputError(words("cli/verify-no-code", { code: plainText(typed) }));
  return heard;
}

function inLines(found: Verification, heard: HeardCode | null): string {
  const { sources, checkpoints, findings, verdict, isQuick, entries, code, root, order } = found;
  const lines = [
    words(`seal/log-${verdict}`),
    ...(found.mayBeKeptBack ? [words("seal/may-be-kept-back")] : []),
    ...(isQuick ? [words("seal/quick")] : []),
    "",
    sourceTable(sources),
    ...findings.map(findingWords),
    ...checkpoints.map((one) =>
      words("cli/verify-checkpoint", {
        code: one.code,
        by: plainText(one.by),
        entries: one.entries,
        state: words(`seal/checkpoint-${one.state}`),
        trust: words(one.trusted ? "seal/trusted" : "seal/not-trusted"),
      }),
    ),
    ...hubKeys(sources),
    words("cli/verify-code", { entries, code, root, order }),
    words("cli/verify-spelled", { spelled: spelledWords(code) }),
    ...(heard ? [heardWords(heard)] : []),
    words("seal/proves-not"),
  ];
  return `${lines.join("\n")}\n`;
}

function extractInLines(found: ExtractVerified, heard: HeardCode | null): string {
  const { verdict, sources, findings, checkpoint, leftOut, entries } = found;
  const walk = plainText(found.walk);
  const lines = [
    words(`seal/extract-${verdict}`),
    checkpoint
      ? words("seal/extract-of", { walk, entries, held: checkpoint.entries })
      : words("seal/extract-of-unproven", { walk, entries }),
    "",
    sourceTable(sources),
    ...findings.map(findingWords),
    ...leftOut.map(({ source, numbers }) =>
      words("seal/extract-left-out", { source: plainText(source), numbers: numbers.replaceAll(",", ", ") }),
    ),
    ...(checkpoint
      ? [
          words("cli/verify-extract-checkpoint", {
            by: plainText(checkpoint.by),
            trust: words(checkpoint.trusted ? "seal/trusted" : "seal/not-trusted"),
            code: checkpoint.code,
            root: checkpoint.root,
          }),
          words("cli/verify-spelled", { spelled: spelledWords(checkpoint.code) }),
        ]
      : []),
    ...hubKeys(sources),
    ...(heard ? [heardWords(heard)] : []),
    words("seal/extract-proves-not"),
  ];
  return `${lines.join("\n")}\n`;
}

function sourceTable(sources: readonly SourceVerified[]): string {
  return textTable(
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
}

function findingWords({ kind, source, number }: SealFinding): string {
  const what = words(`seal/found-${kind}`);
  return number === null
    ? words("cli/verify-finding", { source: plainText(source), what })
    : words("cli/verify-finding-at", { source: plainText(source), number, what });
}

/** The keys of hubs, to be compared with what was given on another way. */
const hubKeys = (sources: readonly SourceVerified[]): readonly string[] =>
  sources.flatMap(({ source, key }) =>
    source.startsWith("/hubs/") && key !== null
      ? [words("cli/verify-hub", { source: plainText(source), key })]
      : [],
  );

const spelledWords = (code: string): string =>
  spelled(code)
    .map((group) => group.map(inWords).join(" "))
    .join(", ");

function heardWords({ entries, differs }: HeardCode): string {
  return entries === null
    ? words("cli/verify-differs", { groups: differs.map(String) })
    : words("cli/verify-same", { entries });
}
