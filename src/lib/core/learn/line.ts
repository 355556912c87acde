/** Belief about a straight line through readings: conjugate linear regression (BDA3 §14.2). */
export interface LineBelief {
  /** offset and slope */
  readonly m: readonly [number, number];
  /** their covariance over the variance of the scatter: upper left, off the diagonal, lower right */
  readonly v: readonly [number, number, number];
  /** shape and rate of the inverse gamma distribution of the variance */
  readonly a: number;
  readonly b: number;
}

const inverse = ([p, q, r]: LineBelief['v']): LineBelief['v'] => {
  const det = p * r - q * q;
  return [r / det, -q / det, p / det];
};
const times = ([p, q, r]: LineBelief['v'], [x, y]: readonly [number, number]) =>
  [p * x + q * y, q * x + r * y] as const;

/** The belief after some readings. @param points x and y of each */
export function lineAfter(
  { m, v, a, b }: LineBelief,
  points: readonly (readonly [x: number, y: number])[],
): LineBelief {
  const before = inverse(v);
  const sum = (of: (x: number, y: number) => number) => points.reduce((all, [x, y]) => all + of(x, y), 0);
  const after = inverse([
    before[0] + points.length,
    before[1] + sum((x) => x),
    before[2] + sum((x) => x * x),
  ]);
  const [p, q] = times(before, m);
  const mean = times(after, [p + sum((_, y) => y), q + sum((x, y) => x * y)]);
  // sum squares of small differences only: subtracting large numbers would lose digits
  const left = sum((x, y) => (y - mean[0] - mean[1] * x) ** 2);
  const moved = [mean[0] - m[0], mean[1] - m[1]] as const;
  const [u, w] = times(before, moved);
  return {
    m: mean,
    v: after,
    a: a + points.length / 2,
    b: b + (left + moved[0] * u + moved[1] * w) / 2,
  };
}

/** The expected y at x: location and scale of Student's t. */
export function lineAt({ m, v: [p, q, r], a, b }: LineBelief, x: number) {
  return {
    freedom: 2 * a,
    location: m[0] + m[1] * x,
    scale: Math.sqrt((b / a) * (1 + p + 2 * q * x + r * x * x)),
  };
}
