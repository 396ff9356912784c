const ORDER = { warning: 0, caution: 1, note: 2 } as const;

/**
 * The alerts of a step in the order they are shown: warnings, then cautions, then notes. Each kind keeps its written
 * order.
 */
export function alertsInOrder<A extends { readonly level: keyof typeof ORDER }>(alerts: readonly A[]): A[] {
  return [...alerts].sort((a, b) => ORDER[a.level] - ORDER[b.level]);
}
