import type { Network } from "../order/index.ts";
import type { Split } from "./layout.ts";
import { Layout } from "./layout.ts";
import type { ProgramSolver } from "./mixed-program.ts";
import type { SplitModel } from "./split-model.ts";
import { splitProgram } from "./split-program.ts";

/** The rules of a proof by a program. */
export interface ProgramProofRules {
  readonly model: SplitModel;
  readonly network: Network;
  readonly solver: ProgramSolver;
  /** The cost of the best split that is known, in ms, no deadline missed. */
  readonly cost: number;
  /** No split costs less. */
  readonly bound: number;
  /** After how many nodes of its search the solver stops. */
  readonly nodes: number;
  /** Whether a split that costs less may be offered. */
  isSound(split: Split, cost: number): boolean;
}

/** What a proof by a program came to. */
export interface ProgramProof {
  /**
   * `proven`: no split costs less. `open`: the solver stopped first, or found only what cannot be laid out or offered.
   * `too-large`: there are too many choices to be written down.
   */
  readonly status: "proven" | "open" | "too-large";
  /** The least cost of a split that is known. */
  readonly cost: number;
  /** No split costs less. */
  readonly bound: number;
  /** How many yes-or-no choices were written down. */
  readonly choices: number;
}

/** With more choices or rows than these nothing is written down. */
const MOST = { choices: 2_000, rows: 60_000 };

/** How often a better split may be found before the solver is asked no more. */
const TURNS = 20;

/**
 * Shows that no split is complete earlier, by a mixed-integer program that a solver finds impossible: all splits that are
 * complete sooner than the best that is known, by the least time that one can be sooner. What a solver finds instead counts
 * only once it was laid out and may be offered.
 */
export function proveByProgram(rules: ProgramProofRules): ProgramProof {
  const { model, network, solver, nodes, isSound } = rules;
  const layout = new Layout(model);
  const step = leastStep(model);
  let { cost, bound } = rules;
  let choices = 0;
  for (let turn = 0; turn < TURNS && cost > bound; turn += 1) {
    const written = splitProgram(model, network, cost - step);
    if (!written) return { status: "proven", cost, bound: cost, choices };
    choices = written.choices;
    if (choices > MOST.choices || written.program.rows.length > MOST.rows)
      return { status: "too-large", cost, bound, choices };
    const answer = solver.solve(written.program, nodes);
    if (answer.status === "impossible") return { status: "proven", cost, bound: cost, choices };
    if (answer.bound !== null) bound = Math.max(bound, Math.min(cost, wholeSteps(answer.bound, step)));
    const split = answer.values && written.read(answer.values);
    const found = split ? layout.costOf(split) : cost;
    if (!split || found >= cost || !isSound(split, found)) break;
    cost = found;
  }
  return { status: cost <= bound ? "proven" : "open", cost, bound, choices };
}

/**
 * A bound in seconds as a finish in ms that a split can have. A solver is sure of a millionth or so: 252.999999 is 253,
 * and never more than there is.
 */
const wholeSteps = (seconds: number, step: number) => Math.ceil((seconds * 1_000) / step - 1e-4) * step;

/** Two splits cannot be complete at times that are nearer to one another: the greatest step of which all times are made, in ms. */
function leastStep({ steps, travel, spans, now }: SplitModel): number {
  let step = 0;
  const take = (time: number) => {
    for (let rest = Math.abs(time); Number.isFinite(rest) && rest !== 0; ) [step, rest] = [rest, step % rest];
  };
  for (const { stands, lags, within, notBefore, doneBy, past, windows } of steps) {
    for (const { time } of stands) if (time > 0) take(time);
    for (const time of [...lags, ...within, notBefore, doneBy, past?.finish ?? 0]) take(time);
    for (const window of windows)
      for (const { from, to } of spans.get(window) ?? []) {
        take(from);
        take(to);
      }
  }
  for (const time of travel) take(time);
  take(now);
  return Math.max(1, step);
}
