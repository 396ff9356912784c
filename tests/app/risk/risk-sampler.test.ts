import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { RiskSampler } from "../../../src/app/risk/risk-sampler.ts";
import type { Risk, RiskModel } from "../../../src/core/plan/index.ts";

/** A worker that answers when told to. */
class HandWorker {
  static last: HandWorker | null = null;
  readonly asked: { model: RiskModel }[] = [];
  readonly terminate = vi.fn();
  #listener: (event: { data: Risk }) => void = () => {};

  constructor() {
    HandWorker.last = this;
  }
  addEventListener(_: string, listener: (event: { data: Risk }) => void): void {
    this.#listener = listener;
  }
  postMessage(request: { model: RiskModel }): void {
    this.asked.push(request);
  }
  answer(risk: string): void {
    this.#listener({ data: risk as unknown as Risk });
  }
}

beforeEach(() => vi.stubGlobal("Worker", HandWorker));
afterEach(() => vi.unstubAllGlobals());

const model = (name: string) => name as unknown as RiskModel;

it("asks for one model at a time, and of those that came meanwhile only the newest", () => {
  const answers: unknown[] = [];
  const sampler = new RiskSampler<string>((risk, subject) => answers.push([risk, subject]));
  const worker = HandWorker.last;
  for (const name of ["first", "second", "third"]) sampler.ask(model(name), name);
  expect(worker?.asked.map(({ model: one }) => one)).toEqual(["first"]);
  worker?.answer("of the first");
  expect(worker?.asked.map(({ model: one }) => one)).toEqual(["first", "third"]);
  worker?.answer("of the third");
  expect(worker?.asked).toHaveLength(2);
  expect(answers).toEqual([
    ["of the first", "first"],
    ["of the third", "third"],
  ]);
  sampler.end();
  expect(worker?.terminate).toHaveBeenCalledOnce();
});
