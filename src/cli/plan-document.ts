import type { Plan, WaitOn } from "../core/plan/index.ts";
import type { Outline } from "../core/procedure/index.ts";
import { formatInstant, inSeconds } from "../core/units/index.ts";

/** A plan as one JSON document; all times in seconds of PET, half-open nowhere: a step lasts from `start` to `finish`. */
export interface PlanDocument {
  readonly procedure: string;
  /** The instant of PET 0; `null` when not given. */
  readonly start: string | null;
  /** `null` when the procedure cannot be planned. */
  readonly finish: number | null;
  readonly steps: readonly {
    readonly id: string;
    readonly by: readonly string[];
    readonly start: number;
    readonly finish: number;
    readonly latestStart: number;
    readonly latestFinish: number;
    readonly slack: number;
    readonly freeSlack: number;
    readonly critical: boolean;
    readonly waits: readonly { readonly crew: string; readonly seconds: number; readonly on: WaitOn }[];
  }[];
  readonly criticalPath: readonly string[];
}

const idAt = (outline: Outline, index: number): string => outline.steps[index]?.step.id ?? "";

/** The document of a plan: its steps in reading order; without steps and finish when there is no timeline. */
export function planDocument({ outline, start, timeline }: Plan): PlanDocument {
  return {
    procedure: outline.procedure.id,
    start: start === null ? null : formatInstant(start),
    finish: timeline && inSeconds(timeline.finish),
    steps: (timeline?.steps ?? []).flatMap((step) =>
      step === null
        ? []
        : [
            {
              id: idAt(outline, step.index),
              by: outline.steps[step.index]?.step.by ?? [],
              start: inSeconds(step.start),
              finish: inSeconds(step.finish),
              latestStart: inSeconds(step.latestStart),
              latestFinish: inSeconds(step.latestFinish),
              slack: inSeconds(step.slack),
              freeSlack: inSeconds(step.freeSlack),
              critical: step.critical,
              waits: step.waits.map(({ crew, time, on }) => ({ crew, seconds: inSeconds(time), on })),
            },
          ],
    ),
    criticalPath: (timeline?.criticalPath ?? []).map((index) => idAt(outline, index)),
  };
}
