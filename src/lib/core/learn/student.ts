/** Logarithm of the gamma function, accurate to 1e-13 (Lanczos, g = 7, nine terms). */
function lnGamma(z: number): number {
  const terms = [
    0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
    12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
  ];
  const x = z - 1;
  const t = x + 7.5;
  const sum = terms.reduce((all, term, n) => all + (n === 0 ? term : term / (x + n)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (x + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Continued fraction of the incomplete beta function (Lentz's method). */
function betaFraction(a: number, b: number, x: number): number {
  const TINY = 1e-300;
  let [c, d] = [1, 1 / Math.max(TINY, 1 - ((a + b) * x) / (a + 1))];
  let value = d;
  for (let m = 1; m <= 300; m += 1) {
    for (const step of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      d = 1 / (1 + step * d || TINY);
      c = 1 + step / c || TINY;
      value *= c * d;
    }
    if (Math.abs(c * d - 1) < 1e-15) break;
  }
  return value;
}

/** Regularised incomplete beta function. */
function incompleteBeta(a: number, b: number, x: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(lnGamma(a + b) - lnGamma(a) - lnGamma(b) + a * Math.log(x) + b * Math.log(1 - x));
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(a, b, x)) / a
    : 1 - (front * betaFraction(b, a, 1 - x)) / b;
}

/** Probability that Student's t with this many degrees of freedom is at most t. */
export function studentBelow(t: number, freedom: number): number {
  const tail = 0.5 * incompleteBeta(freedom / 2, 0.5, freedom / (freedom + t * t));
  return t > 0 ? 1 - tail : tail;
}

/** The t that Student's t stays below with this probability, 0 to 1; found by halving. */
export function studentQuantile(chance: number, freedom: number): number {
  if (chance === 0.5) return 0;
  if (chance < 0.5) return -studentQuantile(1 - chance, freedom);
  let [low, high] = [0, 1];
  while (studentBelow(high, freedom) < chance) high *= 2;
  for (let n = 0; n < 100 && high - low > 1e-14 * high; n += 1) {
    const middle = (low + high) / 2;
    if (studentBelow(middle, freedom) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
