import type { Three } from "./merge-fields.ts";
import { ABSENT, each, mergedValue } from "./merge-fields.ts";

/**
 * What two sides made of a field of words ([WRD4]). The texts of a list are merged by their places and those of records by their ids, so that two who
 * translate different alerts of one step do not conflict. Lists of different lengths have not the same places: they are merged as a whole.
 */
export function mergedWords(values: Three<unknown>): ReturnType<typeof mergedValue<unknown>> {
  const whole = mergedValue(values);
  if (whole !== "undecided") return whole;
  const { base, ours, theirs } = values;
  if (Array.isArray(ours) && Array.isArray(theirs) && ours.length === theirs.length) {
    const before = base === ABSENT ? ours.map(() => null) : base;
    if (!Array.isArray(before) || before.length !== ours.length) return "undecided";
    const parts = ours.map((text, place) =>
      mergedValue<unknown>({ base: before[place], ours: text, theirs: theirs[place] }),
    );
    return inOne(parts, (texts) => texts);
  }
  const byId = each(values, (one) => (one === ABSENT ? {} : one));
  if (!isById(byId.base) || !isById(byId.ours) || !isById(byId.theirs)) return "undecided";
  const { base: old, ours: own, theirs: their } = byId as Three<Readonly<Record<string, unknown>>>;
  const ids = [...new Set([...Object.keys(own), ...Object.keys(their)])];
  const textOf = (texts: Readonly<Record<string, unknown>>, id: string) =>
    Object.hasOwn(texts, id) ? texts[id] : ABSENT;
  const parts = ids.map((id) =>
    mergedValue<unknown>({ base: textOf(old, id), ours: textOf(own, id), theirs: textOf(their, id) }),
  );
  return inOne(parts, (texts) =>
    Object.fromEntries(ids.map((id, place) => [id, texts[place]]).filter(([, text]) => text !== ABSENT)),
  );
}

const isById = (value: unknown): boolean =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** The merged parts as one value; `undecided` where one of them is. */
function inOne(
  parts: readonly ReturnType<typeof mergedValue<unknown>>[],
  made: (texts: readonly unknown[]) => unknown,
): ReturnType<typeof mergedValue<unknown>> {
  const texts = parts.flatMap((part) => (part === "undecided" ? [] : [part.value]));
  return texts.length < parts.length ? "undecided" : { value: made(texts) };
}
