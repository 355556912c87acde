import fc from 'fast-check';
import { expect, test } from 'vitest';
import { FAR, squaredDistances } from '../../src/lib/core/mask/distance.ts';
import { chunk } from './runs.ts';

const picture = fc
  .record({
    width: fc.integer({ min: 1, max: 24 }),
    height: fc.integer({ min: 1, max: 24 }),
    few: fc.boolean(),
  })
  .chain(({ width, height, few }) =>
    fc
      .array(fc.integer({ min: 0, max: few ? 30 : 2 }), {
        minLength: width * height,
        maxLength: width * height,
      })
      .map((cells) => ({ width, height, inside: Uint8Array.from(cells, (one) => Number(one > 0)) })),
  );

/** Every pixel against every other. */
function byHand(inside: Uint8Array, width: number): number[] {
  return [...inside.keys()].map((n) => {
    if (inside[n] === 0) return 0;
    let best = FAR;
    inside.forEach((one, m) => {
      if (one === 1) return;
      const [dx, dy] = [(n % width) - (m % width), Math.floor(n / width) - Math.floor(m / width)];
      best = Math.min(best, dx * dx + dy * dy);
    });
    return best;
  });
}

test('distances are those of every pixel against every other, on random masks', () => {
  fc.assert(
    fc.property(picture, ({ width, height, inside }) => {
      expect([...squaredDistances(inside, width, height)]).toEqual(byHand(inside, width));
    }),
    chunk(500),
  );
});
