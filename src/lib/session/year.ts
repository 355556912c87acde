import type { MetalFamily } from '../core/facts/metals.ts';
import type { JobSummary } from './job-summary.ts';

/** An etched job in its year. */
export interface YearDot {
  readonly id: string;
  readonly title: string;
  readonly family: MetalFamily;
  /** ms since 1970 */
  readonly at: number;
  readonly pieces: number;
  readonly minutes: number;
  readonly chargeAh: number;
  readonly wantedUm: number;
  /** measured over wanted depth; null when not measured */
  readonly share: number | null;
}

export interface YearSums {
  readonly jobs: number;
  readonly pieces: number;
  readonly minutes: number;
  readonly chargeAh: number;
  readonly measured: number;
  /** measured jobs within a fifth of the wanted depth */
  readonly near: number;
}

/** All jobs of a year. */
export interface Year {
  readonly year: number;
  readonly dots: readonly YearDot[];
  readonly whole: YearSums;
  /** from January on */
  readonly months: readonly YearSums[];
  /** most jobs first */
  readonly metals: readonly { readonly family: MetalFamily; readonly sums: YearSums }[];
}

/** A job within this share of the wanted depth counts as successful, for most purposes; our own estimate. */
const NEAR = 0.2;
/** The same as measured over wanted depth, from and to. */
export const nearBand = [1 - NEAR, 1 + NEAR] as const;

/** Whether a measured share of the wanted depth counts as successful. */
export const isNear = (share: number): boolean => Math.abs(share - 1) <= NEAR;

const sumsOf = (dots: readonly YearDot[]): YearSums => {
  const sum = (of: (dot: YearDot) => number): number => dots.reduce((all, dot) => all + of(dot), 0);
  const measured = dots.filter(({ share }) => share !== null);
  return {
    jobs: dots.length,
    pieces: sum(({ pieces }) => pieces),
    minutes: sum(({ minutes }) => minutes),
    chargeAh: sum(({ chargeAh }) => chargeAh),
    measured: measured.length,
    near: measured.filter(({ share }) => isNear(share ?? 0)).length,
  };
};

/** Every year with a bite in it, the latest first, by local dates. */
export function yearsIn(summaries: readonly JobSummary[]): readonly Year[] {
  const years = new Map<number, YearDot[]>();
  for (const { id, title, pair, came } of summaries) {
    if (!pair || !came) continue;
    const { at, pieces, minutes, chargeAh, wantedUm, gotUm } = came;
    const share = gotUm === null || wantedUm <= 0 ? null : gotUm / wantedUm;
    const year = new Date(at).getFullYear();
    const dot = { id, title, family: pair.family, at, pieces, minutes, chargeAh, wantedUm, share };
    years.set(year, [...(years.get(year) ?? []), dot]);
  }
  return [...years]
    .toSorted(([a], [b]) => b - a)
    .map(([year, all]) => {
      const dots = all.toSorted((a, b) => a.at - b.at);
      const families = [...new Set(dots.map(({ family }) => family))];
      return {
        year,
        dots,
        whole: sumsOf(dots),
        months: Array.from({ length: 12 }, (_, month) =>
          sumsOf(dots.filter(({ at }) => new Date(at).getMonth() === month)),
        ),
        metals: families
          .map((family) => ({ family, sums: sumsOf(dots.filter((dot) => dot.family === family)) }))
          .toSorted((a, b) => b.sums.jobs - a.sums.jobs),
      };
    });
}
