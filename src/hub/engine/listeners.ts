/** Callbacks that are told of the same thing. */
export interface Listeners<Told extends readonly unknown[]> {
  /** Adds one; returns the end of it. Added twice, it is told twice. */
  add(hear: (...told: Told) => void): () => void;
  /** Tells all that are there now. */
  tell(...told: Told): void;
}

/** Nobody listens yet. */
export function noListeners<Told extends readonly unknown[]>(): Listeners<Told> {
  const all = new Set<{ readonly hear: (...told: Told) => void }>();
  return {
    add: (hear) => {
      const one = { hear };
      all.add(one);
      return () => void all.delete(one);
    },
    tell: (...told) => {
      for (const { hear } of [...all]) hear(...told);
    },
  };
}
