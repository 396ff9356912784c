import type { RefObject } from "react";
import { useCallback, useLayoutEffect, useRef, useSyncExternalStore } from "react";
import type { Duration } from "../../core/units/index.ts";
import { Listeners, NO_TIME } from "../../core/units/index.ts";

/**
 * The PET that is shown, of whoever moves it. It is kept apart from the screen's state, so that what changes with each picture is
 * written for itself and a screen is drawn anew only when something on it is another.
 */
export interface ShownPet {
  readonly pet: () => Duration;
  readonly subscribe: (onChange: () => void) => () => void;
}

/** A PET that stays. */
export const standingPet = (pet: Duration): ShownPet => ({ pet: () => pet, subscribe: () => () => {} });

/** A PET that is moved picture by picture. */
export class MovingPet implements ShownPet {
  readonly #listeners = new Listeners();
  #pet: Duration;

  constructor(pet: Duration) {
    this.#pet = pet;
  }

  readonly pet = (): Duration => this.#pet;

  readonly subscribe = (onChange: () => void): (() => void) => this.#listeners.add(onChange);

  /** Tells those who show it, unless it is there already. */
  readonly move = (pet: Duration): void => {
    if (pet === this.#pet) return;
    this.#pet = pet;
    this.#listeners.tell();
  };
}

/** What is read of the PET that is shown; who asks is drawn anew only when that is another. */
export function useReadAt<Read>(shown: ShownPet, read: (pet: Duration) => Read): Read {
  return useSyncExternalStore(shown.subscribe, () => read(shown.pet()));
}

/**
 * An element of which `write` writes what hangs on the PET that is shown: whenever anything else changed, and when that PET is `grain`
 * or more from the one that was written last.
 */
export function useWrittenAt<Written extends Element>(
  shown: ShownPet,
  write: (element: Written, pet: Duration) => void,
  grain: Duration = NO_TIME,
): RefObject<Written | null> {
  const element = useRef<Written>(null);
  const latest = useRef({ write, grain });
  const written = useRef<Duration | null>(null);
  const writeNow = useCallback(() => {
    if (!element.current) return;
    written.current = shown.pet();
    latest.current.write(element.current, written.current);
  }, [shown]);
  useLayoutEffect(() => {
    latest.current = { write, grain };
    writeNow();
  });
  useLayoutEffect(
    () =>
      shown.subscribe(() => {
        const gone = Math.abs(shown.pet() - (written.current ?? Number.NEGATIVE_INFINITY));
        if (gone >= latest.current.grain) writeNow();
      }),
    [shown, writeNow],
  );
  return element;
}
