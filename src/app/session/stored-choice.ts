import { Listeners } from "../../core/units/index.ts";

/**
 * A choice of the reader that is kept on this device as JSON. Without a store it lasts for the visit. `current` gives
 * the same object until the choice changes.
 */
export class StoredChoice<Value> {
  readonly #key: string;
  readonly #none: Value;
  readonly #listeners = new Listeners();
  #known: { readonly text: string | null; readonly value: Value };

  /** `none` is the choice while nothing is stored. */
  constructor(key: string, none: Value) {
    this.#key = key;
    this.#none = none;
    this.#known = { text: null, value: none };
  }

  readonly current = (): Value => {
    const text = this.#stored();
    if (text !== this.#known.text) this.#known = { text, value: this.#valueOf(text) };
    return this.#known.value;
  };

  /** Stores the choice, or removes it when it is the one for nothing stored. */
  choose(value: Value): void {
    const text = value === this.#none ? null : JSON.stringify(value);
    this.#known = { text, value };
    try {
      if (text === null) localStorage.removeItem(this.#key);
      else localStorage.setItem(this.#key, text);
    } catch {
      // Without a store the choice lasts for this visit.
    }
    this.#listeners.tell();
  }

  /** Calls back after each change; returns a function that ends the subscription. */
  readonly watch = this.#listeners.add;

  #stored(): string | null {
    try {
      return localStorage.getItem(this.#key);
    } catch {
      return this.#known.text;
    }
  }

  #valueOf(text: string | null): Value {
    if (text === null) return this.#none;
    try {
      // Only values that were read and found valid are stored, and every user of the value reads it again.
      return JSON.parse(text) as Value;
    } catch {
      return this.#none;
    }
  }
}
