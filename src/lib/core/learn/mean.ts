import { studentQuantile } from './student.ts';

/** Belief about a mean and the scatter around it: normal–inverse-gamma (Murphy 2007; BDA3 §3.3). */
export interface Belief {
  /** mean, and the number of jobs it is worth */
  readonly m: number;
  readonly kappa: number;
  /** shape and rate of the inverse gamma distribution of the variance */
  readonly a: number;
  readonly b: number;
}

/** Prediction of a value: location and scale of Student's t. */
export interface Expectation {
  readonly freedom: number;
  readonly location: number;
  readonly scale: number;
}

export interface Moments {
  /** sum of the weights, that is, the number of full values they are worth */
  readonly count: number;
  readonly mean: number;
  /** weighted sum of squared differences from the mean */
  readonly squares: number;
}

/**
 * Mean and squared differences, one value after another (Welford 1962, weighted after West 1979). Plain sums
 * of squares would lose the digits of large values.
 * @param weights how much each value counts, above 0; 1 each when left out
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

/** The belief after some values, each counted by its weight. The order does not matter. */
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

/** Prediction of the next value. */
export const nextOf = ({ m, kappa, a, b }: Belief): Expectation => ({
  freedom: 2 * a,
  location: m,
  scale: Math.sqrt((b * (kappa + 1)) / (a * kappa)),
});

/** Prediction of the mean itself. */
export const meanOf = ({ m, kappa, a, b }: Belief): Expectation => ({
  freedom: 2 * a,
  location: m,
  scale: Math.sqrt(b / (a * kappa)),
});

/** The value that the predicted one stays below with this probability. */
export const quantileOf = ({ freedom, location, scale }: Expectation, chance: number): number =>
  location + scale * studentQuantile(chance, freedom);
