import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Finding, FindingLevel, Outline } from "../procedure/index.ts";
import { finding, jsonPointer } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";
import type { Surprise, SurprisesFile } from "./surprises-file.ts";

/** One finding of a surprise, with the keys that lead to its place in it. */
interface Found {
  readonly level: FindingLevel;
  readonly code: string;
  readonly path: readonly string[];
  readonly said: Message;
}

const error = (code: string, path: readonly string[], said: Message): Found => ({
  level: "error",
  code,
  path,
  said,
});

const caution = (code: string, path: readonly string[], said: Message): Found => ({
  ...error(code, path, said),
  level: "caution",
});

/** What is wrong with surprises for a procedure ([TRN1]), in the order of the file; without positions. */
export function surpriseFindings(file: SurprisesFile, outline: Outline): readonly Finding[] {
  const { id, title } = outline.procedure;
  if (file.procedure !== id) {
    const said = message("surprises/other-procedure", { named: file.procedure, title });
    return [finding("error", "surprises/other-procedure", "/procedure", said)];
  }
  return file.surprises.flatMap((surprise, index) => {
    const earlier = file.surprises.slice(0, index);
    return [
      ...againstEarlier(surprise, earlier),
      ...whenFindings(surprise, outline),
      ...effectFindings(surprise, outline),
      ...expectFindings(surprise, outline),
    ].map(({ level, code, path, said }) =>
      finding(level, code, jsonPointer(["surprises", index, ...path]), said, { things: [surprise.id] }),
    );
  });
}

const bare = ({ when, does }: Surprise) => JSON.stringify([when, does]);

/** What a surprise says twice, or against one before it. */
function againstEarlier(surprise: Surprise, earlier: readonly Surprise[]): readonly Found[] {
  const { id, does } = surprise;
  if (earlier.some((one) => one.id === id)) {
    return [error("surprises/doubled-id", ["id"], message("surprises/doubled-id", { id }))];
  }
  const same = earlier.find((one) => bare(one) === bare(surprise));
  if (same) return [caution("surprises/doubled", [], message("surprises/doubled", { id, other: same.id }))];
  const against = earlier.find((one) => {
    if (does.kind === "decision" && one.does.kind === "decision") return does.decision === one.does.decision;
    if (does.kind === "record" && one.does.kind === "record") {
      return does.step === one.does.step && does.record === one.does.record;
    }
    return false;
  });
  const said = against && message("surprises/contrary", { id, other: against.id });
  return said ? [error("surprises/contrary", ["does"], said)] : [];
}

/** When a surprise comes: a step and a place that are there, a PET within the limit, not after what it is about. */
function whenFindings({ id, when, does }: Surprise, outline: Outline): readonly Found[] {
  const limit = outline.procedure.limits.elapsed;
  const pet = "pet" in when ? when.pet : "to" in when ? when.to : null;
  const key = "pet" in when ? "pet" : "to";
  if ("from" in when && when.from > when.to) {
    return [error("surprises/backwards", ["when", "from"], message("surprises/backwards", { id }))];
  }
  if (pet !== null && limit !== undefined && pet > limit) {
    return [
      error("surprises/past-limit", ["when", key], message("surprises/past-limit", { id, pet, limit })),
    ];
  }
  if ("place" in when) {
    const unknown = outline.place(when.place) === null;
    return [
      ...(unknown
        ? [
            error(
              "surprises/no-place",
              ["when", "place"],
              message("surprises/no-place", { place: when.place }),
            ),
          ]
        : []),
      ...(when.crew === undefined ? [] : noCrew(outline, when.crew, ["when", "crew"])),
    ];
  }
  if (!("step" in when)) return [];
  const missing = noStep(outline, when.step, ["when", "step"]);
  if (missing.length > 0) return missing;
  const about = "step" in does ? outline.step(does.step) : null;
  const begins = outline.step(when.step);
  if (!about || !begins || about.index >= begins.index) return [];
  if (!about.performers.some((lane) => begins.performers.includes(lane))) return [];
  const late = message("surprises/too-late", { id, step: about.step.id, when: begins.step.id });
  return [error("surprises/too-late", ["when", "step"], late)];
}

/** What a surprise is about: crew, steps, records, items, supplies and decisions that are there, and a surprise at all. */
function effectFindings({ id, does }: Surprise, outline: Outline): readonly Found[] {
  switch (does.kind) {
    case "stretch":
      return noStep(outline, does.step, ["does", "step"]);
    case "record": {
      const missing = noStep(outline, does.step, ["does", "step"]);
      if (missing.length > 0) return missing;
      const record = outline.step(does.step)?.step.records.find((one) => one.id === does.record);
      if (!record) {
        const said = message("surprises/no-record", { record: does.record, step: does.step });
        return [error("surprises/no-record", ["does", "record"], said)];
      }
      const isWithin =
        (record.min === undefined || does.value >= record.min) &&
        (record.max === undefined || does.value <= record.max);
      const said = message("surprises/within-limits", { id });
      return isWithin ? [caution("surprises/within-limits", ["does", "value"], said)] : [];
    }
    case "missing":
      if (outline.item(does.item) === null) {
        return [
          error("surprises/no-item", ["does", "item"], message("surprises/no-item", { item: does.item })),
        ];
      }
      return outline.steps.some(({ step }) => step.moves.some(({ item }) => item === does.item))
        ? []
        : [
            caution(
              "surprises/unused-item",
              ["does", "item"],
              message("surprises/unused-item", { id, item: does.item }),
            ),
          ];
    case "silent":
      return noCrew(outline, does.crew, ["does", "crew"]);
    case "contact":
      return [];
    case "supply": {
      const { supplies } = outline.procedure;
      if (supplies.some((one) => one.crew === does.crew && one.id === does.supply)) return [];
      const said = message("surprises/no-supply", { crew: does.crew, supply: does.supply });
      return [error("surprises/no-supply", ["does", "supply"], said)];
    }
    case "decision": {
      const decision = outline.decision(does.decision)?.decision;
      if (!decision) {
        const said = message("surprises/no-decision", { decision: does.decision });
        return [error("surprises/no-decision", ["does", "decision"], said)];
      }
      if (!decision.outcomes.includes(does.outcome)) {
        const said = message("surprises/no-outcome", { outcome: does.outcome, decision: does.decision });
        return [error("surprises/no-outcome", ["does", "outcome"], said)];
      }
      return decision.expect === does.outcome
        ? [caution("surprises/expected", ["does", "outcome"], message("surprises/expected", { id }))]
        : [];
    }
  }
}

/** Whether those who should notice it are there. */
function expectFindings({ expect }: Surprise, outline: Outline): readonly Found[] {
  return expect.who.flatMap((crew, index) => noCrew(outline, crew, ["expect", "who", String(index)]));
}

function noStep(outline: Outline, step: StepId, path: readonly string[]): readonly Found[] {
  return outline.step(step) ? [] : [error("surprises/no-step", path, message("surprises/no-step", { step }))];
}

function noCrew(outline: Outline, crew: string, path: readonly string[]): readonly Found[] {
  return outline.lane(crew) >= 0
    ? []
    : [error("surprises/no-crew", path, message("surprises/no-crew", { crew }))];
}
