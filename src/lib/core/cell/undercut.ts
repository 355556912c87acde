import { readTable } from '../chemistry/curve.ts';
import { landReserve, undercutRatio } from '../facts/limits.ts';
import { undercutTable } from '../facts/undercut.ts';
import { greatestDepth } from '../mask/foresee.ts';
import { converted } from '../units/convert.ts';

export type Regime = keyof typeof undercutTable;

const clamped = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/**
 * Undercut over depth of one opening, interpolated in the table; beyond its ends, the value at the end.
 * @param depth,width,mask of the bite, the opening and the resist, all in one unit
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

/** Assumed thickness of a coat of resist, mm: less than the width of any opening. */
const RESIST = 0.05;

/**
 * How far the bite creeps under the resist. Of the two regimes it takes the one with more undercut, where the
 * surface evens out the current. The usual ratio is used before an opening is known.
 * @param depth,opening mm
 * @returns mm
 */
export const expectedUndercut = (depth: number, opening: number | null): number =>
  depth * (opening === null ? undercutRatio.value : undercutOf('polarised', depth, opening, RESIST));

/**
 * Greatest depth at which the thinnest line still holds its resist.
 * @param line its width, mm
 * @param depth,undercut of the wanted bite, mm
 * @returns mm; 0 where no depth does
 */
export const deepestFor = (line: number, depth: number, undercut: number): number =>
  greatestDepth(line, undercut / depth, converted(landReserve.value, 'um', 'mm'));
