import { changesBetween, changesByTask } from "../core/changes/index.ts";
import type { Wait } from "../core/course/index.ts";
import type { Effect, Sides } from "../core/effect/index.ts";
import { effectOf } from "../core/effect/index.ts";
import type { Site } from "../core/light/index.ts";
import type { Change } from "../core/procedure/index.ts";
import type { Instant } from "../core/units/index.ts";
import { clockText } from "../core/units/index.ts";
import { inWords, lengthText, words } from "../words/index.ts";
import { compareDocument } from "./compare-document.ts";
import { documentText } from "./document-text.ts";
import { marginText } from "./margin-text.ts";
import { lightFromFile, tellContact } from "./orbit-file.ts";
import { plainText } from "./plain-text.ts";
import type { ProcedureText } from "./procedure-text.ts";
import { soundProcedure } from "./procedure-text.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { textTable } from "./text-table.ts";

/** The options of `compare`. */
export interface CompareArguments {
  readonly start?: Instant;
  readonly orbit?: string;
  /** Ground sites for the windows of contact. */
  readonly site: readonly Site[];
  readonly json?: boolean;
}

/** The same as for `plan`, so that both report the same figures for one procedure. */
const SAMPLING = { samples: 10_000, seed: 1 };

/** `compare`: the changes that turn one procedure into another, and their effect. */
export async function compareCommand(
  files: { readonly before: string; readonly after: string },
  { start, orbit, site, json = false }: CompareArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const before = await soundProcedure(files.before);
  const after = await soundProcedure(files.after);
  const light = await lightFromFile(orbit, start, site);
  const changes = changesBetween(before.file, after.file);
  const effect = effectOf(before.outline, after.outline, { start: start ?? null, light, ...SAMPLING });
  terminal.out(
    json
      ? documentText(() => compareDocument(changes, effect))
      : `${changesInWords(before, after, changes)}\n${effectInWords(effect)}\n${words("cli/caution")}\n`,
  );
  tellContact(files.after, after.outline.procedure, light, terminal);
  return EXIT.fine;
}

/** The changes grouped by the tasks they concern, in the order of the later procedure. */
function changesInWords(before: ProcedureText, after: ProcedureText, changes: readonly Change[]): string {
  const names = `${plainText(before.name)} → ${plainText(after.name)}\n`;
  if (changes.length === 0) return `${names}${words("cli/compare-same")}\n`;
  const blocks = changesByTask(before.file, after.file, changes).map(({ task, title, changes: said }) => {
    const heading = task === null ? words("cli/compare-outside") : `${title} (${task})`;
    const lines = said.map(({ message }) => `  ${plainText(inWords(message))}\n`);
    return `${plainText(heading)}\n${lines.join("")}`;
  });
  return `${names}${words("cli/changes", { count: changes.length })}\n\n${blocks.join("\n")}`;
}

const percent = (share: number) => words("figures/chance", { share });

function effectInWords(effect: Effect): string {
  const row = <Value>(name: string, sides: Sides<Value | null>, said: (value: Value) => string) => {
    const [before, after] = [sides.before, sides.after].map((value) => (value === null ? "–" : said(value)));
    return [
      name,
      before ?? "",
      sides.before === sides.after ? words("cli/compare-unchanged") : (after ?? ""),
    ];
  };
  const waited = (waits: readonly Wait[]) => waits.reduce((sum, { from, to }) => sum + to - from, 0);
  const facts = textTable(
    [
      { heading: "" },
      { heading: words("cli/column-before"), figures: true },
      { heading: words("cli/column-after"), figures: true },
    ],
    [
      row(words("cli/compare-finish"), effect.finish, (finish) => clockText(finish, "up")),
      row(words("cli/compare-margin"), effect.margin, marginText),
      row(words("cli/compare-within"), effect.withinLimit, percent),
      row(
        words("cli/compare-waits"),
        { before: waited(effect.waits.before), after: waited(effect.waits.after) },
        (time) => lengthText(time as never),
      ),
    ],
  );
  const time = (value: number | null) => (value === null ? "–" : clockText(value as never));
  const shifted = effect.steps.filter(
    ({ start, slack }) => start.before !== start.after || slack.before !== slack.after,
  );
  const steps = textTable(
    [
      { heading: words("cli/plan-step") },
      { heading: words("cli/plan-start"), figures: true },
      { heading: words("cli/column-then"), figures: true },
      { heading: words("cli/plan-slack"), figures: true },
      { heading: words("cli/column-then"), figures: true },
    ],
    shifted.map(({ id, start, slack }) => [
      id,
      time(start.before),
      time(start.after),
      time(slack.before),
      time(slack.after),
    ]),
  );
  const path = (ids: readonly string[]) => ids.join(" → ") || words("cli/none");
  const { before, after } = effect.criticalPath;
  const isSamePath = path(before) === path(after);
  const { findings } = effect;
  const said = (sign: string, list: typeof findings.new) =>
    list
      .map(
        ({ level, message }) => `  ${sign} ${words(`cli/level-${level}`)} ${plainText(inWords(message))}\n`,
      )
      .join("");
  return [
    `${words("cli/compare-effect")}\n${facts}\n`,
    `${words("cli/critical-path", { steps: path(before) })}\n`,
    isSamePath ? "\n" : `         ${words("cli/compare-path-then", { steps: path(after) })}\n\n`,
    steps === "" ? `${words("cli/compare-no-steps")}\n` : steps,
    `\n${words("cli/compare-findings", {
      new: findings.new.length,
      gone: findings.gone.length,
      same: findings.same.length,
    })}\n`,
    said("+", findings.new),
    said("−", findings.gone),
  ].join("");
}
