import type { Fit, FitCase, FittedSet } from "../core/fit/index.ts";
import { fitOf, planCase, walkCase } from "../core/fit/index.ts";
import { readLines } from "../core/log/index.ts";
import type { Outline } from "../core/procedure/index.ts";
import { AS_EXPECTED } from "../core/procedure/index.ts";
import type { Duration, Instant, TaskId } from "../core/units/index.ts";
import { clockText } from "../core/units/index.ts";
import { readText } from "../io/files/index.ts";
import { inWords, words } from "../words/index.ts";
import { taskNamed } from "./argument-values.ts";
import { documentText } from "./document-text.ts";
import { fitDocument } from "./fit-document.ts";
import { marginText } from "./margin-text.ts";
import { lightFromFile } from "./orbit-file.ts";
import { plainText } from "./plain-text.ts";
import { foldedFile, procedureFile } from "./read-input.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { textTable } from "./text-table.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The options of `fit`. */
export interface FitArguments {
  readonly limit?: Duration;
  readonly chance?: number;
  /** For a log: the instant from which it is asked. */
  readonly at?: Instant;
  /** For a procedure: the instant of PET 0. */
  readonly start?: Instant;
  readonly orbit?: string;
  readonly leaveOut: readonly string[];
  readonly samples: number;
  readonly seed: number;
  readonly tries: number;
  readonly json?: boolean;
}

/** `fit`: which get-aheads still fit, for a procedure or from the state that a log folds into. */
export async function fitCommand(file: string, said: FitArguments, terminal: Terminal): Promise<ExitStatus> {
  const isLog = readLines(await readText(file)).entries.length > 0;
  const { fitCase, whole } = isLog ? await walkIn(file, said) : await planIn(file, said);
  const limit = said.limit ?? whole.procedure.limits.elapsed ?? null;
  if (limit === null && said.chance !== undefined) {
    throw new UnusableInputError(words("cli/fit-chance-needs-limit"));
  }
  const { samples, seed, tries } = said;
  const fit = fitOf(fitCase, { limit, chance: said.chance ?? null, samples, seed, tries });
  terminal.out(
    said.json
      ? documentText(() => fitDocument(fit))
      : inLines(fitCase, fit, { limit, chance: said.chance ?? null }),
  );
  return fit.verdict === "does-not-fit" ? EXIT.findings : EXIT.fine;
}

interface Asked {
  readonly fitCase: FitCase;
  /** The procedure with the tasks that are left out. */
  readonly whole: Outline;
}

async function planIn(file: string, said: FitArguments): Promise<Asked> {
  const { outline } = await procedureFile(file);
  if (said.at !== undefined) throw new UnusableInputError(words("cli/fit-at-needs-log"));
  const light = await lightFromFile(said.orbit, said.start);
  const options = { outcomes: AS_EXPECTED, start: said.start ?? null, light };
  return { fitCase: planCase(outline, options, tasksNamed(outline, said.leaveOut)), whole: outline };
}

async function walkIn(file: string, said: FitArguments): Promise<Asked> {
  if (said.start !== undefined || said.orbit !== undefined) {
    throw new UnusableInputError(words("cli/fit-log-has-start"));
  }
  const { folded, ledger } = await foldedFile(file, said.at);
  const { outline } = ledger.inForce;
  const at = said.at ?? folded.lastAt ?? ledger.opened.at;
  return { fitCase: walkCase(ledger, at, tasksNamed(outline, said.leaveOut)), whole: outline };
}

const tasksNamed = (outline: Outline, ids: readonly string[]): ReadonlySet<TaskId> =>
  new Set(ids.map((id) => taskNamed(outline, id)));

function inLines(
  fitCase: FitCase,
  fit: Fit,
  { limit, chance }: { readonly limit: Duration | null; readonly chance: number | null },
): string {
  const { outline, choices, now } = fitCase;
  const titles = new Map<TaskId, string>(choices.map(({ id, title }) => [id, plainText(title)]));
  const named = (ids: readonly TaskId[]) =>
    ids.map((id) => titles.get(id) ?? id).join(", ") || words("cli/none");
  const under =
    limit === null
      ? words("cli/fit-no-limit", { now })
      : chance === null
        ? words("cli/fit-limit", { now, limit })
        : words("cli/fit-limit-chance", { now, limit, chance });
  const table = textTable(
    [
      { heading: words("cli/fit-worth"), figures: true },
      { heading: words("cli/compare-finish"), figures: true },
      { heading: words("cli/compare-margin"), figures: true },
      { heading: words("cli/fit-chance"), figures: true },
      { heading: words("cli/fit-kept") },
      { heading: words("cli/fit-left-out") },
    ],
    (fit.sets.length > 0 ? fit.sets : fit.essential ? [fit.essential] : []).map((set) => [
      words("cli/fit-worth-of", { worth: set.worth }),
      clockText(set.finish, "up"),
      set.margin === null ? "" : marginText(set.margin),
      chanceText(set),
      named(set.keep),
      named(set.drop),
    ]),
  );
  const left = (fit.sets[0] ?? fit.essential)?.left ?? [];
  return [
    `${plainText(outline.procedure.title)}\n`,
    `${under}\n\n`,
    `${verdictWords(fit, choices.length)}\n`,
    table === "" ? "" : `\n${table}`,
    fit.fewest === null
      ? ""
      : `${words("cli/fit-fewest", { kept: named(fit.fewest.keep), left: named(fit.fewest.drop) })}\n`,
    left.length === 0
      ? ""
      : `\n${words("cli/fit-left")}\n${left.map(({ message }) => `  ${plainText(inWords(message))}\n`).join("")}`,
    `\n${words("cli/fit-how")}\n${words("cli/caution")}\n`,
  ].join("");
}

function verdictWords({ verdict, shortBy, bound, sets, tried, essential }: Fit, choices: number): string {
  if (verdict === "proven") {
    return choices === 0
      ? words("cli/fit-no-choices")
      : words("cli/fit-proven", { worth: sets[0]?.worth ?? 0, tried });
  }
  if (verdict === "best-found") {
    return words("cli/fit-best-found", { worth: sets[0]?.worth ?? 0, bound, tried });
  }
  if (essential === null) return words("cli/fit-no-plan");
  return shortBy === null ? words("cli/fit-never") : words("cli/fit-short", { time: shortBy });
}

const chanceText = ({ withinLimit, error }: FittedSet) =>
  withinLimit === null ? "" : words("cli/fit-chance-of", { share: withinLimit, error: (error ?? 0) * 100 });
