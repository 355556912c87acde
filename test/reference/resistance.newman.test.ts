import { closedFormResistance } from '../../src/lib/core/cell/resistance.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { cellOf } from '../fixtures/cells.ts';
import { check, near } from './check.ts';

/**
 * Two strips of length L, flush in insulating walls a gap h apart: R·κ·W = K(k′)/K(k), k = tanh(πL/2h).
 * The long-strip form h/(L + 0.4413·h) is exact to 0.02 % from L = h on. Here W is the liquid's depth.
 */
const FILL = 60;
const WIDE = 100_000;

for (const [lengthOverGap, printed, tolerance] of [
  [1, 0.693904, 5e-4],
  [2, 0.409623, 1e-4],
  [4, 0.225161, 1e-4],
] as const) {
  check('newman', `channel, L/h = ${lengthOverGap}: R·κ·W = ${printed} (${tolerance * 100} %)`, () => {
    const gap = 40;
    const strip = [lengthOverGap * gap, FILL] as const;
    const { setup, openArea } = cellOf({ tub: [120, WIDE, FILL], window: strip, plate: strip, gap });
    const { resistance } = closedFormResistance(setup, si<'area'>(openArea), si<'conductivity'>(10));
    near(resistance * 10 * (FILL / 1e3), printed, tolerance);
  });
}

check('newman', 'end allowance of long strips, 2·ln 2/π = 0.4413 of the gap in all', () => {
  const gap = 40;
  const strip = [10 * gap, FILL] as const;
  const { setup, openArea } = cellOf({ tub: [120, WIDE, FILL], window: strip, plate: strip, gap });
  const { pathArea } = closedFormResistance(setup, si<'area'>(openArea), si<'conductivity'>(10));
  near((pathArea / (FILL / 1e3) - 10 * 0.04) / 0.04, 0.4413, 1e-4);
});
