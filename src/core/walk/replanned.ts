import type { Course } from "../course/index.ts";
import type { Instant } from "../units/index.ts";
import type { Replanning } from "./amendment.ts";
import { forecastOf } from "./forecast.ts";
import type { Ledger } from "./ledger.ts";

/** The plan before and after an amendment, planned when it is first asked for, so that the fold does not wait for it. */
export class Replanned implements Replanning {
  readonly #ledgers: Readonly<Record<"before" | "after", Ledger>>;
  readonly #at: Instant;
  readonly #planned = new Map<"before" | "after", Course | null>();

  constructor(before: Ledger, after: Ledger, at: Instant) {
    this.#ledgers = { before, after };
    this.#at = at;
  }

  get before(): Course | null {
    return this.#plan("before");
  }

  get after(): Course | null {
    return this.#plan("after");
  }

  #plan(side: "before" | "after"): Course | null {
    const known = this.#planned.get(side);
    if (known !== undefined) return known;
    const planned = forecastOf(this.#ledgers[side], this.#at);
    this.#planned.set(side, planned);
    return planned;
  }
}
