/** A value with its weight. */
export interface WeightedValue {
  readonly value: number;
  readonly weight: number;
}

/** How the values of several groups vary: among the groups, and within each. */
export interface Credibility {
  readonly mean: number;
  /** The variance of the groups' own means; below zero when chance alone moves them more. */
  readonly between: number;
  /** The variance of a value of weight 1 about the mean of its group. */
  readonly within: number;
}

/**
 * Returns the collective mean and the two variances of Bühlmann and Straub (1970). `null` when there are fewer than two groups,
 * or no group with two values.
 */
export function credibility(groups: readonly (readonly WeightedValue[])[]): Credibility | null {
  const facts = groups.flatMap((values) => {
    const weight = values.reduce((sum, one) => sum + one.weight, 0);
    if (!(weight > 0)) return [];
    const middle = values.reduce((sum, one) => sum + one.weight * one.value, 0) / weight;
    const squares = values.reduce((sum, one) => sum + one.weight * (one.value - middle) ** 2, 0);
    return [{ weight, middle, squares, degrees: values.length - 1 }];
  });
  const degrees = facts.reduce((sum, one) => sum + one.degrees, 0);
  if (facts.length < 2 || degrees === 0) return null;
  const total = facts.reduce((sum, { weight }) => sum + weight, 0);
  const middle = facts.reduce((sum, one) => sum + one.weight * one.middle, 0) / total;
  const within = facts.reduce((sum, { squares }) => sum + squares, 0) / degrees;
  const spread = facts.reduce((sum, one) => sum + one.weight * (one.middle - middle) ** 2, 0);
  const share = total - facts.reduce((sum, { weight }) => sum + weight * weight, 0) / total;
  const between = (spread - (facts.length - 1) * within) / share;
  // The mean of the groups is weighted by how far each is to be believed, once the two variances are known.
  const believed = facts.map(({ weight }) => (between > 0 ? weight / (weight + within / between) : weight));
  const sum = believed.reduce((one, other) => one + other, 0);
  return {
    mean: facts.reduce((so, one, at) => so + (believed[at] ?? 0) * one.middle, 0) / sum,
    between,
    within,
  };
}
