import type { HoldUp } from "../core/course/index.ts";
import { marginOf } from "../core/course/index.ts";
import type { Outline } from "../core/procedure/index.ts";
import { amendmentsReviewed } from "../core/review/index.ts";
import type { Duration, Instant } from "../core/units/index.ts";
import { clockText } from "../core/units/index.ts";
import type { LaneState, WalkState } from "../core/walk/index.ts";
import {
  alertsOf,
  deviationsAt,
  newerEntriesOf,
  outstandingOf,
  stateDocument,
  walkStateAt,
} from "../core/walk/index.ts";
import { inWords, words } from "../words/index.ts";
import { amendmentLines } from "./amendment-lines.ts";
import { documentText } from "./document-text.ts";
import { plainText, shortText } from "./plain-text.ts";
import type { FoldedFile } from "./read-input.ts";
import { foldedFile, reportUncleanLog } from "./read-input.ts";
import { ledgerAsked } from "./speak-as-asked.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { textTable } from "./text-table.ts";

/** `state`: the state that a log folds into, at an instant or at the time of its last entry. */
export async function stateCommand(
  file: string,
  { at, json = false }: { readonly at?: Instant; readonly json?: boolean },
  terminal: Terminal,
): Promise<ExitStatus> {
  const log = await foldedFile(file, at);
  const instant = at ?? log.folded.lastAt ?? log.ledger.opened.at;
  terminal.out(
    json
      ? documentText(() => stateDocument(log.folded, instant, inWords))
      : inLines(log, walkStateAt(ledgerAsked(log.ledger), instant), instant),
  );
  return reportUncleanLog(file, log, terminal);
}

function inLines({ folded }: FoldedFile, state: WalkState, instant: Instant): string {
  const { opened, inForce } = state.ledger;
  const { outline } = inForce;
  const { forecast } = state;
  const title = plainText(outline.procedure.title);
  const now = { phase: words(`cli/phase-${state.phase}`), at: instant };
  const lanes = textTable(
    [
      { heading: words("cli/column-crew") },
      { heading: words("cli/column-status") },
      { heading: words("cli/column-done"), figures: true },
      { heading: words("cli/column-behind"), figures: true },
      { heading: words("cli/column-step") },
      { heading: words("cli/column-action") },
      { heading: words("cli/column-waits-on") },
    ],
    state.lanes.map((lane) => laneRow(outline, lane)),
  );
  const deviations = deviationsAt(folded, state).map(
    ({ kind, step, text }) =>
      `  ${words(`cli/kind-${kind}`)}${step ? ` ${step}` : ""}: ${plainText(inWords(text))}\n`,
  );
  const alerts = alertsOf(state).map(({ level, since, text, seen }) => {
    const told = { level: words(`cli/level-${level}`), since, text: plainText(inWords(text)) };
    const line =
      seen === null
        ? words("cli/alert-unseen", told)
        : words("cli/alert-seen", { ...told, who: plainText(seen.actor ?? words("cli/somebody")) });
    return `  ${line}\n`;
  });
  const outstanding = outstandingOf(state).map(
    ({ kind, step, since, text }) =>
      `  ${words("cli/outstanding-since", {
        kind: words(`cli/kind-${kind}`),
        since,
        about: step ?? words("cli/watch"),
        text: plainText(inWords(text)),
      })}\n`,
  );
  const amendments = amendmentLines(amendmentsReviewed(state.ledger)).map((line) => `  ${line}\n`);
  const newer = newerEntriesOf(folded).length;
  return [
    `${words("cli/state-title", {
      title,
      walk: plainText(opened.walk),
      mode: words(`cli/mode-${opened.mode}`),
    })}\n`,
    state.pet === null
      ? words("cli/state-no-clock", now)
      : words("cli/state-clock", { ...now, pet: state.pet }),
    "\n\n",
    lanes,
    `\n${forecastWords(forecast)}\n`,
    alerts.length > 0 ? `\n${words("cli/alerts")}\n${alerts.join("")}` : "",
    outstanding.length > 0 ? `\n${words("cli/outstanding")}\n${outstanding.join("")}` : "",
    amendments.length > 0 ? `\n${words("cli/amendments")}\n${amendments.join("")}` : "",
    newer > 0 ? `\n${words("cli/newer-entries", { count: newer })}\n` : "",
    deviations.length > 0 ? `\n${words("cli/deviations")}\n${deviations.join("")}` : "",
    `\n${words("cli/caution")}\n`,
  ].join("");
}

function forecastWords(forecast: WalkState["forecast"]): string {
  if (forecast === null) return words("cli/no-forecast");
  const { finish } = forecast;
  const margin = marginOf(forecast);
  if (margin === null) return words("cli/forecast", { finish });
  return words(margin < 0 ? "cli/forecast-over" : "cli/forecast-within", { finish, margin });
}

function laneRow(outline: Outline, lane: LaneState): string[] {
  const step = lane.step === null ? undefined : outline.step(lane.step)?.step;
  return [
    callOf(outline, lane.crew),
    words(`cli/status-${lane.status}`),
    `${lane.done}/${lane.of}`,
    lane.behind === null ? "" : signed(lane.behind),
    step?.id ?? "",
    shortText(step?.do ?? "", 40),
    lane.waitingOn.map((holdUp) => holdUpWords(outline, holdUp)).join("; "),
  ];
}

const callOf = (outline: Outline, crew: string) => plainText(outline.crew[outline.lane(crew)]?.call ?? crew);

const signed = (behind: Duration) => (behind < 0 ? clockText(behind) : `+${clockText(behind)}`);

function holdUpWords(outline: Outline, holdUp: HoldUp): string {
  switch (holdUp.kind) {
    case "crew":
      return words("cli/waits-crew", { crew: callOf(outline, holdUp.crew), step: holdUp.step });
    case "notBefore":
      return words("cli/waits-not-before", { until: holdUp.until });
    case "window":
      return words("cli/waits-window", { window: holdUp.window, until: holdUp.until });
    case "lag":
      return words("cli/waits-lag", { step: holdUp.step, until: holdUp.until });
    case "hold":
      return words("cli/waits-hold", { since: holdUp.since });
  }
}
