import { act, renderHook } from "@testing-library/react";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { useAnswers } from "../../../src/app/write/use-answers.ts";
import type { RiskModel } from "../../../src/core/plan/index.ts";

/** A worker of which the test says what it answers. */
class StandInWorker extends EventTarget {
  static all: StandInWorker[] = [];
  readonly asked: { readonly number: number; readonly step?: string }[] = [];
  isOver = false;

  constructor() {
    super();
    StandInWorker.all.push(this);
  }

  postMessage(data: { readonly number: number; readonly step?: string }): void {
    this.asked.push(data);
  }

  terminate(): void {
    this.isOver = true;
  }

  say(data: object): void {
    act(() => void this.dispatchEvent(new MessageEvent("message", { data })));
  }

  fail(): void {
    act(() => void this.dispatchEvent(new Event("error")));
  }
}

beforeEach(() => {
  StandInWorker.all = [];
  vi.stubGlobal("Worker", StandInWorker);
});
afterEach(() => void vi.unstubAllGlobals());

const MODEL = { limit: 1 } as unknown as RiskModel;
const plan = (number: number, finish: number, model: RiskModel | null = MODEL) => ({
  number,
  plan: { finish, margin: 0, timeline: null },
  model,
});
const findings = (number: number, isTried = true) => ({ number, findings: [], isTried });

function asking() {
  const hook = renderHook(
    ({ text, step = null }) => useAnswers({ text, start: null, light: null, isDrawn: false, step }),
    { initialProps: { text: "one" } as { text: string; step?: string | null } },
  );
  const [writing, chance] = StandInWorker.all;
  if (!writing || !chance) throw new Error("no workers");
  return { ...hook, writing, chance };
}

it("[WRT4] shows each part as it comes, and says of each whether it is of the text before", () => {
  const { result, rerender, writing, chance } = asking();
  expect(result.current).toMatchObject({ plan: null, findings: null, within: null, isBehind: true });
  writing.say(plan(1, 10));
  writing.say(findings(1));
  chance.say({ number: 1, within: 0.5 });
  expect(result.current).toMatchObject({ within: { value: 0.5, isOld: false }, isBehind: false });
  rerender({ text: "two" });
  expect(result.current).toMatchObject({
    plan: { isOld: true },
    findings: { isOld: true },
    within: { value: 0.5, isOld: true },
    isBehind: true,
  });
  writing.say(plan(2, 20));
  expect(result.current).toMatchObject({
    plan: { value: { finish: 20 }, isOld: false },
    findings: { isOld: true },
    within: { isOld: true },
  });
  writing.say(findings(2, false));
  chance.say({ number: 2, within: 0.25 });
  expect(result.current).toMatchObject({ findings: { isOld: false }, within: { value: 0.25, isOld: false } });
  expect(result.current.isBehind).toBe(true);
  writing.say(findings(2));
  expect(result.current.isBehind).toBe(false);
});

it("[WRT4] samples only the latest of the plans that come while one is sampled", () => {
  const { rerender, writing, chance } = asking();
  for (const number of [1, 2, 3]) {
    rerender({ text: `text ${number}` });
    writing.say(plan(number, 10));
  }
  expect(chance.asked.map(({ number }) => number)).toEqual([1]);
  chance.say({ number: 1, within: 1 });
  expect(chance.asked.map(({ number }) => number)).toEqual([1, 3]);
});

it("[WRT4] a chance that comes late is not taken for that of a text which has none", () => {
  const { result, rerender, writing, chance } = asking();
  writing.say(plan(1, 10));
  rerender({ text: "two" });
  writing.say(plan(2, 20, null));
  writing.say(findings(2));
  chance.say({ number: 1, within: 1 });
  expect(result.current).toMatchObject({ within: { value: null, isOld: false }, isBehind: false });
});

it("[WRT4] says that answers are not to be had, and takes it back when they are", () => {
  const { result, rerender, writing, chance, unmount } = asking();
  writing.say(plan(1, 10));
  chance.fail();
  expect(result.current.isBroken).toBe(true);
  rerender({ text: "two" });
  writing.say(plan(2, 10));
  expect(chance.asked).toHaveLength(2);
  chance.say({ number: 2, within: 1 });
  expect(result.current.isBroken).toBe(false);
  unmount();
  expect([writing.isOver, chance.isOver]).toEqual([true, true]);
});

it("[WRT3] asks what is possible at the step that is looked at, and says which answers are of another text or step", () => {
  const { result, rerender, writing } = asking();
  expect(writing.asked.at(-1)).not.toHaveProperty("step");
  rerender({ text: "one", step: "a" });
  expect(writing.asked.at(-1)).toEqual({ number: 1, step: "a" });
  expect(result.current.offers).toBeNull();
  writing.say({ number: 1, step: "a", offers: [] });
  expect(result.current.offers).toEqual({ value: [], isOld: false });
  rerender({ text: "two", step: "a" });
  expect(writing.asked.at(-1)).toEqual({ number: 2, step: "a" });
  expect(result.current.offers).toEqual({ value: [], isOld: true });
  rerender({ text: "two", step: "b" });
  expect(result.current.offers).toBeNull();
  writing.say({ number: 2, step: "b", offers: null });
  expect(result.current.offers).toEqual({ value: null, isOld: false });
});

it("[WRT4] nothing of the text before is ever drawn as of the one that is written now", () => {
  const drawn: { readonly text: string; readonly isOld: boolean | undefined }[] = [];
  const { rerender } = renderHook(
    ({ text }) => {
      const { plan } = useAnswers({ text, start: null, light: null, isDrawn: false, step: null });
      drawn.push({ text, isOld: plan?.isOld });
    },
    { initialProps: { text: "one" } },
  );
  StandInWorker.all[0]?.say(plan(1, 10));
  rerender({ text: "two" });
  expect(drawn.filter(({ text }) => text === "two").map(({ isOld }) => isOld)).not.toContain(false);
  expect(drawn).toContainEqual({ text: "one", isOld: false });
});
