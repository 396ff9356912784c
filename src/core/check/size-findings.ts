import { message } from "../../words/index.ts";
import type { Finding, Step } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import { parseDuration } from "../units/index.ts";
import type { WrittenRecord, WrittenStep } from "./written-steps.ts";

/** Nobody works longer than this at one step without saying in between how far they are. */
const LONGEST_STEP = parseDuration("PT4H") ?? 0;

/** What is so many times off its neighbours is probably in another unit, or has a slipped point. */
const FAR = 100;

/** A step is probably in seconds instead of minutes when half of all steps take at least so many times as long. */
const SHORT = 12;

/** Returns advice on figures that are out of all proportion ([PRO19]): durations, and limits of records. */
export function sizeFindings(steps: readonly WrittenStep[]): Finding[] {
  const usual = median(steps.flatMap(({ step }) => (step.time?.likely ? [step.time.likely] : [])));
  return [...steps.flatMap((one) => durationFindings(one, usual)), ...limitFindings(steps)];
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

/** A milestone takes no time because nothing is done: nobody is anywhere, moves, records or confirms anything. */
function isMilestone({ at, to, anchor, moves, records, confirm, check, alerts }: Step): boolean {
  const isSomewhere = at !== undefined || to !== undefined || anchor !== undefined;
  const isWork = moves.length > 0 || records.length > 0 || confirm !== undefined || check.length > 0;
  return !isSomewhere && !isWork && alerts.every(({ level }) => level === "note");
}

function durationFindings({ step, pointer }: WrittenStep, usual: number): Finding[] {
  const { time } = step;
  if (!time) return [];
  const advise = (code: string, key: "time/zero" | "time/long" | "time/seconds" | "time/spread") => [
    finding(
      "advice",
      code,
      `${pointer}/time`,
      message(key, {
        step: step.id,
        likely: time.likely,
        low: time.low,
        high: time.high,
        usual: usual as Duration,
      }),
      { steps: [step.id] },
    ),
  ];
  if (time.high === 0) return isMilestone(step) ? [] : advise("time/zero", "time/zero");
  if (time.high > LONGEST_STEP) return advise("time/long", "time/long");
  if (time.low > 0 && time.high >= time.low * FAR) return advise("time/far-off", "time/spread");
  // As minutes the same figure would be usual; calls and looks do take seconds.
  const isShort = time.likely > 0 && time.likely * SHORT <= usual && time.likely * 60 <= usual * 6;
  return isShort && !CALLS.test(step.do) ? advise("time/far-off", "time/seconds") : [];
}

/** Matches steps that are said or looked at rather than done. */
const CALLS = /^(?:announce|ask|call|confirm|listen|look|mark|read|report|say|tell|watch)\b/i;

interface Limit {
  readonly record: WrittenRecord;
  readonly key: "min" | "max";
  readonly size: number;
}

/** Limits of records that are a hundred times off every other limit of the same unit, where there are at least two others. */
function limitFindings(steps: readonly WrittenStep[]): Finding[] {
  const byUnit = new Map<string, Limit[]>();
  for (const { records } of steps) {
    for (const one of records) {
      for (const key of ["min", "max"] as const) {
        const size = Math.abs(one.record[key] ?? 0);
        if (size === 0 || one.record.unit === "1") continue;
        byUnit.set(one.record.unit, [...(byUnit.get(one.record.unit) ?? []), { record: one, key, size }]);
      }
    }
  }
  return [...byUnit.values()].flatMap((limits) =>
    limits.flatMap((limit) => {
      const others = limits.filter((other) => other !== limit);
      const isFar = others.every(({ size }) => Math.max(size / limit.size, limit.size / size) >= FAR);
      return others.length >= 2 && isFar ? [farOff(limit)] : [];
    }),
  );
}

function farOff({ record: { record, step, pointer }, key }: Limit): Finding {
  const said = message("size/far-off", {
    step,
    value: record[key] ?? 0,
    unit: record.unit,
    record: record.label ?? record.id,
  });
  return finding("advice", "size/far-off", `${pointer}/${key}`, said, { steps: [step], things: [record.id] });
}
