import { isIP } from "node:net";
import { InvalidArgumentError } from "commander";
import type { Site } from "../core/light/index.ts";
import { parseSite } from "../core/light/index.ts";
import type { GetAheads, Outcomes, Outline } from "../core/procedure/index.ts";
import { nearest } from "../core/procedure/index.ts";
import type { DecisionId, Duration, Instant, TaskId } from "../core/units/index.ts";
import { parseDuration, parseInstant } from "../core/units/index.ts";
import { words } from "../words/index.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

const LARGEST_SEED = 2 ** 32 - 1;
const LARGEST_COUNT = 1_000_000;
const HIGHEST_PACE = 100_000;

/** An instant given on the command line. */
export function instantValue(text: string): Instant {
  const instant = parseInstant(text);
  if (instant === null) {
    throw new InvalidArgumentError(words("cli/bad-instant"));
  }
  return instant;
}

/** A seed: a whole number from 0 to 4294967295. */
export function seedValue(text: string): number {
  const seed = /^\d{1,10}$/.test(text) ? Number(text) : Number.NaN;
  if (!(seed <= LARGEST_SEED)) throw new InvalidArgumentError(words("cli/bad-seed", { most: LARGEST_SEED }));
  return seed;
}

/** A count: a whole number from 1 to a million. */
export function countValue(text: string): number {
  const count = /^\d{1,7}$/.test(text) ? Number(text) : 0;
  if (count < 1 || count > LARGEST_COUNT)
    throw new InvalidArgumentError(words("cli/bad-count", { most: LARGEST_COUNT }));
  return count;
}

const MOST_HOURS = 24 * 31;

/** A number of hours, at most a month of them. */
export function hoursValue(text: string): number {
  const hours = /^\d+(\.\d+)?$/.test(text) ? Number(text) : 0;
  if (!(hours > 0 && hours <= MOST_HOURS)) {
    throw new InvalidArgumentError(words("cli/bad-hours", { most: MOST_HOURS }));
  }
  return hours;
}

/** Adds a ground site to the sites given before. */
export function siteValue(text: string, before: readonly Site[]): Site[] {
  const site = parseSite(text);
  if (!site) throw new InvalidArgumentError(words("cli/bad-site"));
  return [...before, site];
}

/** A port: a whole number from 0 to 65535. */
export function portValue(text: string): number {
  const port = /^\d{1,5}$/.test(text) ? Number(text) : Number.NaN;
  if (!(port <= 65_535)) throw new InvalidArgumentError(words("cli/bad-port"));
  return port;
}

/** Requests in a minute: a whole number from 60 to ten million. */
export function rateValue(text: string): number {
  const rate = /^\d{1,8}$/.test(text) ? Number(text) : 0;
  if (rate < 60 || rate > 10_000_000) {
    throw new InvalidArgumentError(words("cli/bad-rate"));
  }
  return rate;
}

/** A name meant for people to read. */
export function nameValue(text: string): string {
  if (!/^[^\p{Cc}]{1,80}$/u.test(text.trim())) {
    throw new InvalidArgumentError(words("cli/bad-name"));
  }
  return text.trim();
}

/** Host names, one for each time the option is given, in lower case. */
export function namesValue(text: string, before: readonly string[]): string[] {
  if (!/^[A-Za-z0-9.-]{1,253}$/.test(text)) throw new InvalidArgumentError(words("cli/bad-host-name"));
  return [...before, text.toLowerCase()];
}

/** Addresses and networks (`10.0.0.0/8`), one for each time the option is given. */
export function networksValue(text: string, before: readonly string[]): string[] {
  const [address = "", length, ...rest] = text.split("/");
  const bits = isIP(address) === 6 ? 128 : 32;
  const isNetwork = length === undefined || (/^\d{1,3}$/.test(length) && Number(length) <= bits);
  if (isIP(address) === 0 || !isNetwork || rest.length > 0) {
    throw new InvalidArgumentError(words("cli/bad-network"));
  }
  return [...before, text];
}

/** How many times faster than real time a rehearsal is played. */
export function paceValue(text: string): number {
  const pace = /^\d+(\.\d+)?$/.test(text) ? Number(text) : 0;
  if (!(pace > 0 && pace <= HIGHEST_PACE)) {
    throw new InvalidArgumentError(words("cli/bad-pace", { most: HIGHEST_PACE }));
  }
  return pace;
}

/** A chance: a number above 0, and below 1 or equal to it. */
export function chanceValue(text: string): number {
  const chance = /^(0?\.\d+|1(\.0+)?)$/.test(text) ? Number(text) : 0;
  if (chance <= 0) throw new InvalidArgumentError(words("cli/bad-chance"));
  return chance;
}

/** A length of time in ISO 8601. */
export function durationValue(text: string): Duration {
  const duration = parseDuration(text);
  if (duration === null) throw new InvalidArgumentError(words("cli/bad-duration"));
  return duration;
}

/** Adds one `old=new` to those given before. */
export function renamedValue(text: string, before: readonly string[]): string[] {
  if (!/^[^=]+=[^=]+$/.test(text)) throw new InvalidArgumentError(words("cli/bad-renamed"));
  return [...before, text];
}

/** The id of a task, which must be in the procedure. */
export function taskNamed({ procedure }: Outline, id: string): TaskId {
  const task = procedure.tasks.find((one) => one.id === id);
  if (task) return task.id;
  const near = nearest(
    id,
    procedure.tasks.map((one) => one.id),
  );
  throw new UnusableInputError(
    near === null ? words("cli/no-task", { task: id }) : words("cli/no-task-near", { task: id, near }),
  );
}

/** Adds one `id=outcome` to those given before. */
export function decideValue(text: string, before: readonly string[]): string[] {
  if (!/^[^=]+=[^=]+$/.test(text)) throw new InvalidArgumentError(words("cli/bad-decide"));
  return [...before, text];
}

/** The get-aheads given by `--get-aheads` and `--get-ahead` options, looked up in the procedure. */
export function getAheadsFrom(outline: Outline, all: boolean, said: readonly string[]): GetAheads {
  if (said.length === 0) return all;
  if (all) throw new UnusableInputError(words("cli/get-aheads-or-some"));
  return new Set(
    said.map((id) => {
      const named = taskNamed(outline, id);
      if (!outline.procedure.tasks.some((task) => task.id === named && task.priority === "get-ahead"))
        throw new UnusableInputError(words("cli/no-get-ahead", { id }));
      return named;
    }),
  );
}

/** Adds one text to those given before by the same option. */
export const againValue = (text: string, before: readonly string[]): string[] => [...before, text];

/** The outcomes given by `--decide` options, looked up in the procedure. */
export function outcomesFrom(outline: Outline, said: readonly string[]): Outcomes {
  const outcomes = new Map<DecisionId, string>();
  for (const one of said) {
    const [id = "", outcome = ""] = one.split("=");
    const made = outline.decision(id);
    if (!made) {
      const ids = outline.decisions.map(({ decision }) => decision.id);
      throw new UnusableInputError(
        ids.length === 0 ? words("cli/no-decision", { decision: id }) : noSuchDecision(id, ids),
      );
    }
    const { decision } = made;
    if (!decision.outcomes.includes(outcome)) {
      throw new UnusableInputError(
        words("cli/no-such-outcome", { outcome, decision: id, known: decision.outcomes.join(", ") }),
      );
    }
    const before = outcomes.get(decision.id);
    if (before !== undefined && before !== outcome)
      throw new UnusableInputError(words("cli/both-outcomes", { decision: id, one: before, other: outcome }));
    outcomes.set(decision.id, outcome);
  }
  return outcomes;
}

function noSuchDecision(decision: string, ids: readonly string[]): string {
  const meant = nearest(decision, ids);
  return meant
    ? words("cli/no-such-decision-meant", { decision, meant })
    : words("cli/no-such-decision", { decision, known: ids.join(", ") });
}
