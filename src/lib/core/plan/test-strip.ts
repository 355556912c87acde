import { momentsOf } from '../learn/mean.ts';
import type { Rate } from '../learn/rate.ts';
import { converted } from '../units/convert.ts';
import type { Figure } from '../units/figure.ts';
import type { Plan } from './plan.ts';

/** Of the planned time, when each window of a strip is stopped out: the wanted depth lies between two of them. */
export const stripShares = [0.5, 0.8, 1.1, 1.4] as const;

/** A window of a test strip: bitten with all the others until it is stopped out. */
export interface StripWindow {
  readonly share: number;
  /** min with current on, from the strip's beginning */
  readonly minutes: number;
  /** A, that the windows still open take until then, as dense as on the piece */
  readonly amps: number;
  /** um, if the bench bites as the plan expects */
  readonly expected: number;
}

/**
 * A strip of windows alike, stopped out one after another.
 * @param windowArea cm², bare in each
 * @returns null for a plan without settings, or without a bare area
 */
export function stripOf(plan: Plan, windowArea: number): readonly StripWindow[] | null {
  const { settings, job, figures } = plan;
  const { run_time: time } = figures;
  const amps = settings?.control === 'amps' ? settings.amps : figures.current?.value;
  if (!settings || !time || amps === undefined || job.piece.openArea === null) return null;
  const bare = job.piece.openArea * job.piece.count * 1e4;
  const each = (amps * windowArea) / bare;
  return stripShares.map((share, n) => ({
    share,
    minutes: time.value * share,
    amps: each * (stripShares.length - n),
    expected: job.piece.depth * 1e6 * share,
  }));
}

/** A depth gauge, um, one standard deviation; and as little as a strip may be off, as a share. */
const GAUGE = 10;
const LEAST_OFF = 0.05;
/** How many of those a window may stand away. */
const ODD = 3;

/** What a strip was bitten by: the plan as it stood then, since what the strip tells moves the plan. */
export interface StripBasis {
  /** um */
  readonly wanted: number;
  /** bite rate that it was planned with */
  readonly rate: number;
}

export const basisOf = (plan: Plan): StripBasis => ({
  wanted: plan.job.piece.depth * 1e6,
  rate: plan.figures.depth?.working.inputs.find(({ id }) => id === 'currentEfficiency')?.value ?? NaN,
});

/**
 * The bite rates that windows tell, by their order.
 * @param depths um; null where none was measured
 * @param shares of the planned time that each was really bitten; as planned without
 */
export const windowRates = (
  { wanted, rate }: StripBasis,
  depths: readonly (number | null)[],
  shares: readonly number[] = stripShares,
): readonly (number | null)[] =>
  shares.map((share, n) => {
    const depth = depths[n] ?? null;
    return depth === null || depth <= 0 ? null : (rate * depth) / (wanted * share);
  });

/** Of the planned time, how long each window was really bitten. @param bitten min, by window */
export const bittenShares = (
  windows: readonly Pick<StripWindow, 'minutes' | 'share'>[],
  bitten: readonly number[],
): readonly number[] => windows.map(({ minutes, share }, n) => (share * (bitten[n] ?? minutes)) / minutes);

/** Depths that windows gain, um a minute. */
export interface StripSpeeds {
  /** the plan's range */
  readonly low: number;
  readonly high: number;
  /** by the rate that the windows told; null before they told any */
  readonly fit: number | null;
}

/** How fast a strip deepens at the plan's amps. @param rate that the windows told; null before */
export function stripSpeeds(
  basis: StripBasis,
  { minutes, share }: Pick<StripWindow, 'minutes' | 'share'>,
  depth: Pick<Figure, 'value' | 'low' | 'high'>,
  rate: number | null,
): StripSpeeds {
  const planned = (basis.wanted * share) / minutes;
  return {
    low: (planned * depth.low) / depth.value,
    high: (planned * depth.high) / depth.value,
    fit: rate === null ? null : (planned / basis.rate) * rate,
  };
}

/** Windows that stand apart from the others by more than a gauge and a steady bench explain, by their order. */
export function oddWindows(
  rates: readonly (number | null)[],
  depths: readonly (number | null)[],
): readonly number[] {
  const told = rates.flatMap((rate, n) => (rate === null ? [] : [{ n, log: Math.log(rate) }]));
  if (told.length < 3) return [];
  return told
    .filter(({ n, log }) => {
      const others = told.filter((other) => other.n !== n).map((other) => other.log);
      const mean = others.reduce((sum, one) => sum + one, 0) / others.length;
      return Math.abs(log - mean) > ODD * Math.hypot(LEAST_OFF, GAUGE / (depths[n] ?? GAUGE));
    })
    .map(({ n }) => n);
}

/** Bare windows side by side on a scrap, mm. */
export interface StripLayout {
  readonly width: number;
  readonly height: number;
  readonly windows: readonly { readonly x: number; readonly y: number }[];
}

/** Bare metal of one window, cm². */
export const windowArea = ({ width, height }: Pick<StripLayout, 'width' | 'height'>): number =>
  converted(width * height, 'mm2', 'cm2');

/** Resist left between windows and at the rims, and metal left above them for the clip, mm; our own reading. */
const LAND = 4;
const CLIP = 12;
/** A window narrower than this is measured by no gauge, mm. */
const NARROWEST = 3;

/** A scrap as most have one, mm. */
export const usualScrap = { width: 60, height: 30 } as const;

/** The smallest scrap that takes all windows, mm. */
export const leastScrap = {
  width: (stripShares.length + 1) * LAND + stripShares.length * NARROWEST,
  height: CLIP + LAND + NARROWEST,
} as const;

/**
 * Four windows on the scrap at hand, as large as it lets them.
 * @param width,height of the scrap, mm, hung by its upper edge
 * @returns null for a scrap that is too small
 */
export function layOut(width: number, height: number): StripLayout | null {
  const count = stripShares.length;
  const wide = (width - (count + 1) * LAND) / count;
  const high = height - CLIP - LAND;
  if (!(wide >= NARROWEST && high >= NARROWEST)) return null;
  return {
    width: wide,
    height: high,
    windows: stripShares.map((_, n) => ({ x: LAND + n * (wide + LAND), y: CLIP })),
  };
}

/**
 * What a strip tells as a whole: its windows shared one bath and one day, so that they count as one job.
 * @returns null before two windows have been measured
 */
export function stripRate(rates: readonly (number | null)[], wantedUm: number): Rate | null {
  const logs = rates.flatMap((rate) => (rate === null ? [] : [Math.log(rate)]));
  if (logs.length < 2) return null;
  const { count, mean, squares } = momentsOf(logs);
  const scatter = Math.sqrt(squares / (count - 1) / count);
  const gauge = GAUGE / wantedUm / Math.sqrt(count);
  return { id: 'strip', way: 'strip', rate: Math.exp(mean), off: Math.max(LEAST_OFF, scatter, gauge) };
}
