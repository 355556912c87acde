import { squaredDistances } from './distance.ts';
import { resistOf, withBare } from './mask.ts';
import { partsOf } from './parts.ts';
import type { Part } from './parts.ts';
import type { Mask } from './raster.ts';

/** Squared distance in pixels that an edge moves by. A pixel's centre is half a pixel from the edge. */
const reach = (mm: number, perMm: number): number => (mm * perMm + 0.5) ** 2;

/**
 * The design that remains after the bite has crept under the resist.
 * @param undercut sideways, mm
 */
export function undercutMask(mask: Mask, undercut: number): Mask {
  if (undercut <= 0) return mask;
  const { width, height, perMm, piece } = mask;
  const squared = squaredDistances(resistOf(mask), width, height);
  const most = reach(undercut, perMm);
  const bare = new Uint8Array(squared.length);
  for (let n = 0; n < bare.length; n += 1) bare[n] = Number(piece[n] === 1 && (squared[n] as number) < most);
  return withBare(mask, bare);
}

export interface Foreseen {
  readonly after: Mask;
  /** parts of the resist that disappear completely */
  readonly lost: readonly Part[];
  /** share of the resist's area that remains, 0 to 1 */
  readonly left: number;
}

/** Foresees the design after undercut. A part of the resist is lost when none of its pixels remain. */
export function foresee(mask: Mask, undercut: number): Foreseen {
  const before = resistOf(mask);
  const after = undercutMask(mask, undercut);
  const { labels, parts } = partsOf(before, mask.width, mask.height);
  const still = new Uint8Array(parts.length + 1);
  let [had, has] = [0, 0];
  for (let n = 0; n < before.length; n += 1) {
    if (before[n] === 0) continue;
    had += 1;
    if (after.bare[n] === 1) continue;
    has += 1;
    still[labels[n] as number] = 1;
  }
  return {
    after,
    lost: parts.filter((_, n) => still[n + 1] === 0),
    left: had === 0 ? 1 : has / had,
  };
}

/**
 * Greatest depth at which every line keeps enough resist.
 * @param thinnest line of resist, mm
 * @param ratio undercut over depth
 * @param reserve width that a line must keep for its resist to hold, mm
 * @returns mm; 0 where no depth does
 */
export const greatestDepth = (thinnest: number, ratio: number, reserve: number): number =>
  Math.max(0, (thinnest - reserve) / 2 / ratio);

/** The design with its resist widened on every side, so that the undercut brings it back to the drawing. */
export function compensated(mask: Mask, undercut: number): Mask {
  if (undercut <= 0) return mask;
  const { width, height, perMm } = mask;
  const squared = squaredDistances(mask.bare, width, height);
  const most = reach(undercut, perMm);
  const bare = new Uint8Array(squared.length);
  for (let n = 0; n < bare.length; n += 1) bare[n] = Number((squared[n] as number) >= most);
  return withBare(mask, bare);
}
