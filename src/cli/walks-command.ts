import { learnFrom } from "../core/learn/index.ts";
import type { Duration } from "../core/units/index.ts";
import { clockText } from "../core/units/index.ts";
import type { ComparedStep, ComparedWalk, ComparedWalks } from "../core/walks-compared/index.ts";
import { compareWalks, forecastScores, forecastsOf, groupDifferences } from "../core/walks-compared/index.ts";
import { words } from "../words/index.ts";
import { documentText } from "./document-text.ts";
import { forecastLines } from "./forecast-lines.ts";
import { plainText } from "./plain-text.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { textTable } from "./text-table.ts";
import { walkLogs } from "./walk-logs.ts";
import type { Groups } from "./walks-document.ts";
import { walksDocument } from "./walks-document.ts";

/** The options of `walks`. */
export interface WalksArguments {
  /** The logs of a second group. */
  readonly versus: readonly string[];
  readonly json?: boolean;
}

/** `walks`: lays many walks of one procedure side by side, and compares two groups of them. */
export async function walksCommand(
  files: readonly string[],
  { versus, json = false }: WalksArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const { records, outline, status } = await walkLogs([...files, ...versus], undefined, terminal);
  const compared = compareWalks(records, learnFrom(records, outline));
  const second = versus.length > 0 ? (await walkLogs(versus, undefined, SILENT)).records : [];
  const groups = groupsOf(
    compared,
    second.map(({ ledger }) => ledger.opened.walk),
  );
  const scores = forecastScores(records.map(forecastsOf));
  terminal.out(
    json
      ? documentText(() => walksDocument(compared, groups, scores))
      : [
          inLines(compared, groups),
          ...forecastLines(scores),
          `\n${words("cli/walks-how")}\n${words("cli/caution")}\n`,
        ].join(""),
  );
  return status;
}

/** What is unclean about the logs of the second group has been said with all others. */
const SILENT: Terminal = { out: () => {}, err: () => {} };

/** The two groups: those given, or the live walks and the rehearsals where there are both; `null` for one group. */
function groupsOf({ walks, steps }: ComparedWalks, given: readonly string[]): Groups | null {
  const isSecond =
    given.length > 0
      ? ({ walk }: ComparedWalk) => given.includes(walk)
      : ({ mode }: ComparedWalk) => mode === "rehearsal";
  const second = walks.filter(isSecond).map(({ walk }) => walk);
  const first = walks.filter((one) => !isSecond(one)).map(({ walk }) => walk);
  if (first.length === 0 || second.length === 0) return null;
  return { first, second, differences: groupDifferences(steps, new Set(second)) };
}

/** Whole per cent down: only what is whole is called 100 %. The last digit of a quotient does not count. */
const share = (of: number | null) =>
  of === null ? "" : words("cli/share-of", { percent: Math.floor(of * 100 + 1e-9) });

const clock = (minutes: number) => clockText((minutes * 60_000) as Duration, "up");

function inLines({ outline, walks, steps }: ComparedWalks, groups: Groups | null): string {
  const call = (crew: string) => plainText(outline.crew[outline.lane(crew)]?.call ?? crew);
  const walkRow = (walk: ComparedWalk) => [
    plainText(walk.walk),
    words(`cli/mode-${walk.mode}`),
    words(`cli/end-${walk.end ?? "open"}`),
    walk.finish === null ? "" : clockText(walk.finish, "up"),
    walk.plannedFinish === null ? "" : clockText(walk.plannedFinish, "up"),
    share(walk.order.share),
    walk.lanes
      .map(({ crew, fitness }) => words("cli/lane-share", { crew: call(crew), share: share(fitness) }))
      .join("; "),
    String(walk.deviations.length),
  ];
  const stepRow = ({ entry, observations, quantiles, spread }: ComparedStep) => [
    entry.number,
    plainText(entry.step.id),
    quantiles
      ? words("cli/three-times", {
          low: clock(quantiles.p10),
          middle: clock(quantiles.p50),
          high: clock(quantiles.p90),
        })
      : "",
    spread === null ? "" : words("cli/spread-of", { factor: spread }),
    observations
      .map(({ minutes, isBrokenOff }) =>
        isBrokenOff ? words("cli/broken-off", { time: clock(minutes) }) : clock(minutes),
      )
      .join(" "),
  ];
  return [
    `${plainText(outline.procedure.title)}\n\n`,
    textTable(
      [
        { heading: words("cli/column-walk") },
        { heading: words("cli/column-mode") },
        { heading: words("cli/column-ending") },
        { heading: words("cli/column-finish"), figures: true },
        { heading: words("cli/column-planned"), figures: true },
        { heading: words("cli/column-order"), figures: true },
        { heading: words("cli/column-fitness") },
        { heading: words("cli/column-deviations"), figures: true },
      ],
      walks.map(walkRow),
    ),
    "\n",
    textTable(
      [
        { heading: words("cli/column-number"), figures: true },
        { heading: words("cli/column-step") },
        { heading: words("cli/column-quantiles"), figures: true },
        { heading: words("cli/column-spread"), figures: true },
        { heading: words("cli/column-each") },
      ],
      steps.filter(({ observations }) => observations.length > 0).map(stepRow),
    ),
    groups ? `\n${groupsTable(groups)}` : "",
    "\n",
  ].join("");
}

function groupsTable({ differences }: Groups): string {
  return textTable(
    [
      { heading: words("cli/column-step") },
      { heading: words("cli/column-first"), figures: true },
      { heading: words("cli/column-second"), figures: true },
      { heading: words("cli/column-ratio"), figures: true },
      { heading: words("cli/column-p"), figures: true },
      { heading: words("cli/column-difference") },
    ],
    differences.map(({ entry, walks: [first, second], ratio, adjusted, isShown }) => [
      plainText(entry.step.id),
      String(first),
      String(second),
      words("cli/spread-of", { factor: ratio }),
      words("cli/weight", { weight: adjusted }),
      words(isShown ? "cli/difference-shown" : "cli/difference-none"),
    ]),
  );
}
