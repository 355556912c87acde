import { readTable } from '../chemistry/curve.ts';
import { landReserve, undercutRatio } from '../facts/limits.ts';
import { undercutTable } from '../facts/undercut.ts';
import { greatestDepth } from '../mask/foresee.ts';
import { converted } from '../units/convert.ts';

export type Regime = keyof typeof undercutTable;

const clamped = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/**
 * Undercut over depth of one opening, between the runs of the table; beyond its ends those hold.
 * @param depth,width,mask of the bite, the opening and the resist, in one unit
 */
export function undercutOf(regime: Regime, depth: number, width: number, mask: number): number {
  const rows = undercutTable[regime];
  const thickness = clamped(mask / width, rows[0][0], (rows.at(-1) ?? rows[0])[0]);
  const { x } = rows[0][1];
  const at = clamped(depth / width, x[0], x.at(-1) ?? x[0]);
  const above = Math.max(
    1,
    rows.findIndex(([own]) => own >= thickness),
  );
  const [low, high] = [rows[above - 1] ?? rows[0], rows[above] ?? rows[0]];
  const part = Math.log(thickness / low[0]) / Math.log(high[0] / low[0]);
  return (1 - part) * readTable(low[1], at, 'log') + part * readTable(high[1], at, 'log');
}

/** Thickness of a coat of resist, mm: thinner than any opening that is bitten. */
const RESIST = 0.05;

/**
 * How far the bite creeps under the resist: the surface evens it out, which of the two regimes creeps further.
 * Before an opening is known, the usual ratio.
 * @param depth,opening mm
 * @returns mm
 */
export const expectedUndercut = (depth: number, opening: number | null): number =>
  depth * (opening === null ? undercutRatio.value : undercutOf('polarised', depth, opening, RESIST));

/**
 * The greatest depth at which the thinnest line still holds its resist.
 * @param line its width, mm
 * @param depth,undercut of the bite as wanted, mm
 * @returns mm; 0 where no depth does
 */
export const deepestFor = (line: number, depth: number, undercut: number): number =>
  greatestDepth(line, undercut / depth, converted(landReserve.value, 'um', 'mm'));
