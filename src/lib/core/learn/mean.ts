import { studentQuantile } from './student.ts';

/** What is believed of a mean and of the scatter about it: normal–inverse-gamma (Murphy 2007; BDA3 §3.3). */
export interface Belief {
  /** mean, and how many jobs it is worth */
  readonly m: number;
  readonly kappa: number;
  /** shape and rate of the variance's inverse gamma */
  readonly a: number;
  readonly b: number;
}

/** Where a value is expected: location and scale of Student's t. */
export interface Expectation {
  readonly freedom: number;
  readonly location: number;
  readonly scale: number;
}

export interface Moments {
  /** sum of the weights: how many whole values they are worth */
  readonly count: number;
  readonly mean: number;
  /** weighted sum of squared differences from the mean */
  readonly squares: number;
}

/**
 * Mean and squares, one value after another (Welford 1962, weighted after West 1979): sums of squares would lose
 * the digits of large values.
 * @param weights how much each value counts, above 0; one each when left out
 */
export function momentsOf(values: readonly number[], weights?: readonly number[]): Moments {
  let [count, mean, squares] = [0, 0, 0];
  values.forEach((value, n) => {
    const weight = weights?.[n] ?? 1;
    const off = value - mean;
    count += weight;
    mean += (weight / count) * off;
    squares += weight * off * (value - mean);
  });
  return { count, mean, squares };
}

/** The belief after some values, each counted by its weight; in any order the same. */
export function updated(
  { m, kappa, a, b }: Belief,
  values: readonly number[],
  weights?: readonly number[],
): Belief {
  const { count, mean, squares } = momentsOf(values, weights);
  return {
    m: (kappa * m + count * mean) / (kappa + count),
    kappa: kappa + count,
    a: a + count / 2,
    b: b + squares / 2 + (kappa * count * (mean - m) ** 2) / (2 * (kappa + count)),
  };
}

/** Where the next value is expected. */
export const nextOf = ({ m, kappa, a, b }: Belief): Expectation => ({
  freedom: 2 * a,
  location: m,
  scale: Math.sqrt((b * (kappa + 1)) / (a * kappa)),
});

/** Where the mean itself is expected. */
export const meanOf = ({ m, kappa, a, b }: Belief): Expectation => ({
  freedom: 2 * a,
  location: m,
  scale: Math.sqrt(b / (a * kappa)),
});

/** The value below which the expected one lies with this chance. */
export const quantileOf = ({ freedom, location, scale }: Expectation, chance: number): number =>
  location + scale * studentQuantile(chance, freedom);
