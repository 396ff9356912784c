import type { HoldUp } from "../core/course/index.ts";
import { marginOf } from "../core/course/index.ts";
import type { Outline } from "../core/procedure/index.ts";
import type { Duration, Instant } from "../core/units/index.ts";
import { clockText, formatInstant, lengthText } from "../core/units/index.ts";
import type { LaneState, WalkState } from "../core/walk/index.ts";
import { stateDocument, walkStateAt } from "../core/walk/index.ts";
import { plainText, shortText } from "./plain-text.ts";
import type { FoldedFile } from "./read-input.ts";
import { foldedFile, reportUncleanLog } from "./read-input.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { CAUTION } from "./terminal.ts";
import { textTable } from "./text-table.ts";

/** `state`: the state a log folds into, at an instant or when its last entry happened. */
export async function stateCommand(
  file: string,
  { at, json = false }: { readonly at?: Instant; readonly json?: boolean },
  terminal: Terminal,
): Promise<ExitStatus> {
  const log = await foldedFile(file, at);
  const instant = at ?? log.folded.lastAt ?? log.ledger.opened.at;
  terminal.out(
    json
      ? `${JSON.stringify(stateDocument(log.folded, instant), null, 2)}\n`
      : inWords(log, walkStateAt(log.ledger, instant), instant),
  );
  return reportUncleanLog(file, log, terminal);
}

function inWords({ folded }: FoldedFile, state: WalkState, instant: Instant): string {
  const { opened, inForce } = state.ledger;
  const { outline } = inForce;
  const { forecast } = state;
  const title = plainText(outline.procedure.title);
  const clock = state.pet === null ? "clock not started" : `PET ${clockText(state.pet)}`;
  const lanes = textTable(
    [
      { heading: "Crew" },
      { heading: "Status" },
      { heading: "Done", figures: true },
      { heading: "Behind", figures: true },
      { heading: "Step" },
      { heading: "Action" },
      { heading: "Waits on" },
    ],
    state.lanes.map((lane) => laneRow(outline, lane)),
  );
  const expected =
    forecast === null
      ? "No forecast can be made."
      : `Forecast finish ${clockText(forecast.finish)}${marginWords(marginOf(forecast))}`;
  const deviations = folded.deviations.map(
    ({ kind, step, text }) => `  ${kind}${step ? ` ${step}` : ""}: ${plainText(text)}\n`,
  );
  return [
    `${title}, walk ${plainText(opened.walk)} (${opened.mode})\n`,
    `${state.phase}, ${clock}, ${formatInstant(instant)}\n\n`,
    lanes,
    `\n${expected}\n`,
    deviations.length > 0 ? `\nDeviations\n${deviations.join("")}` : "",
    `\n${CAUTION}\n`,
  ].join("");
}

const marginWords = (margin: Duration | null) =>
  margin === null ? "" : `, ${lengthText(margin)} ${margin < 0 ? "over" : "within"} the elapsed limit`;

function laneRow(outline: Outline, lane: LaneState): string[] {
  const step = lane.step === null ? undefined : outline.step(lane.step)?.step;
  return [
    callOf(outline, lane.crew),
    lane.status,
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
      return `${callOf(outline, holdUp.crew)} (${holdUp.step})`;
    case "window":
      return `window ${holdUp.window} until ${clockText(holdUp.until)}`;
    case "lag":
      return `the lag after ${holdUp.step} until ${clockText(holdUp.until)}`;
    case "hold":
      return `the hold since ${clockText(holdUp.since)}`;
  }
}
