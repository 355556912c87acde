import { closedFormResistance } from '../../src/lib/core/cell/resistance.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { cellOf } from '../fixtures/cells.ts';
import { check, near } from './check.ts';

/**
 * Two strips of length L, flush in insulating walls a gap h apart: R·κ·W = K(k′)/K(k), k = tanh(πL/2h).
 * Here W is the liquid's depth. The closed form is a stand-in until the field is solved: 3.1 %.
 */
const GAP = 40;
const FILL = 60;

/** R·κ·W of strips so many gaps long. */
function ofStrips(lengthOverGap: number): number {
  const strip = [lengthOverGap * GAP, FILL] as const;
  const { setup, openArea } = cellOf({
    tub: [120, 100_000, FILL],
    window: strip,
    plate: strip,
    gap: GAP,
    plateFaces: 'front',
  });
  const { resistance } = closedFormResistance(setup, si<'area'>(openArea), si<'conductivity'>(10));
  return resistance * 10 * (FILL / 1e3);
}

for (const [lengthOverGap, printed] of [
  [0.5, 1.066359],
  [1, 0.693904],
  [2, 0.409623],
  [4, 0.225161],
] as const) {
  check('newman', `channel, L/h = ${lengthOverGap}: R·κ·W = ${printed} (3.1 %)`, () => {
    near(ofStrips(lengthOverGap), printed, 3.1e-2);
  });
}

check('newman', 'long strips, h/(L + 0.4413·h), the end allowance 2·ln 2/π of the gap in all (1 %)', () => {
  for (const lengthOverGap of [10, 30, 100]) {
    near(ofStrips(lengthOverGap), 1 / (lengthOverGap + (2 * Math.LN2) / Math.PI), 1e-2);
  }
});
