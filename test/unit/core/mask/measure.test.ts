import { describe, expect, test } from 'vitest';
import { maskOf } from '../../../../src/lib/core/mask/mask.ts';
import { measure } from '../../../../src/lib/core/mask/measure.ts';
import { loopArea, outlines } from '../../../../src/lib/core/mask/outline.ts';
import { partings } from '../../../../src/lib/core/mask/threshold.ts';
import { drawn, targets } from '../../../fixtures/targets.ts';
import type { Target, View } from '../../../fixtures/targets.ts';

/** The figure is bare, the ground resist. */
function maskFrom({ inside }: Target, view: View, darkIs: 'bare' | 'resist' = 'bare') {
  const picture = drawn(inside, view);
  const [best] = partings(picture) ?? [];
  if (!best) throw new Error('no two tones');
  return maskOf(best.grey, best.level, darkIs, picture.perMm);
}

describe('a drawing of known area and widths', () => {
  test('there are twenty', () => {
    expect(targets.length).toBeGreaterThanOrEqual(20);
  });
  describe.each(targets)('$name', (target) => {
    test.each([150, 300, 600])('at %i dpi: area 0.5 %, width within a pixel', (dpi) => {
      const mask = maskFrom(target, { dpi });
      const found = measure(mask);
      expect(Math.abs(found.area / target.area - 1), `${found.area} of ${target.area}`).toBeLessThan(0.005);
      expect(Math.abs((found.gap?.width ?? 0) - target.narrowest) * mask.perMm).toBeLessThanOrEqual(1);
    });
    test('turned by 17 degrees: area 1 %', () => {
      const found = measure(maskFrom(target, { dpi: 200, turned: 17 }));
      expect(Math.abs(found.area / target.area - 1)).toBeLessThan(0.01);
    });
    test('its traced outline encloses what was measured', () => {
      const mask = maskFrom(target, { dpi: 300 }, 'resist');
      expect(Math.abs(loopArea(outlines(mask)) / target.area - 1)).toBeLessThan(0.01);
    });
  });
});
