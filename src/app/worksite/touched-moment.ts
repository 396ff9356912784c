import type { Duration } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";

/**
 * The PET that a reader touched last, on a timeline or on the slider of a map; `null` before the first. It is kept apart
 * from the screen's state, so that a timeline is not drawn anew for each moment that its map passes.
 */
export class TouchedMoment {
  readonly #listeners = new Listeners();
  #pet: Duration | null;

  /** `pet` is the moment to begin with; none unless given. */
  constructor(pet: Duration | null = null) {
    this.#pet = pet;
  }

  readonly pet = (): Duration | null => this.#pet;

  readonly touch = (pet: Duration | null): void => {
    this.#pet = pet;
    this.#listeners.tell();
  };

  readonly subscribe = (onChange: () => void): (() => void) => this.#listeners.add(onChange);
}
