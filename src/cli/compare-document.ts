import type { Wait } from "../core/course/index.ts";
import type { Effect, Sides } from "../core/effect/index.ts";
import type { Change, Finding } from "../core/procedure/index.ts";
import { inSeconds } from "../core/units/index.ts";
import { inWords } from "../words/index.ts";
import { waitDocument } from "./plan-document.ts";

const seconds = <Time extends number>(sides: Sides<Time | null>) => ({
  before: sides.before === null ? null : inSeconds(sides.before),
  after: sides.after === null ? null : inSeconds(sides.after),
});

const findingsOf = (findings: readonly Finding[]) =>
  findings.map(({ level, code, message, pointer, steps }) => ({
    level,
    code,
    message: inWords(message),
    pointer,
    steps,
  }));

const waitsOf = (waits: readonly Wait[]) => waits.map((wait) => ({ step: wait.step, ...waitDocument(wait) }));

/**
 * Changes and their effect as one JSON document. Times are in seconds, shares from 0 to 1; `null` on a side without a
 * value.
 */
export function compareDocument(changes: readonly Change[], effect: Effect): object {
  const { finish, margin, withinLimit, criticalPath, steps, waits, findings } = effect;
  return {
    changes,
    effect: {
      finish: seconds(finish),
      margin: seconds(margin),
      withinLimit,
      criticalPath,
      steps: steps.map(({ id, start, slack }) => ({ id, start: seconds(start), slack: seconds(slack) })),
      waits: { before: waitsOf(waits.before), after: waitsOf(waits.after) },
      findings: {
        new: findingsOf(findings.new),
        gone: findingsOf(findings.gone),
        same: findingsOf(findings.same),
      },
    },
  };
}
