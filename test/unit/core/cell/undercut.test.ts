import { expect, test } from 'vitest';
import { deepestFor, expectedUndercut } from '../../../../src/lib/core/cell/undercut.ts';
import { landReserve, undercutRatio } from '../../../../src/lib/core/facts/limits.ts';

test('before an opening is known the usual ratio stands, then the table’s', () => {
  expect(expectedUndercut(0.2, null)).toBe(0.2 * undercutRatio.value);
  // a narrow opening is undercut less for its depth than a wide one
  expect(expectedUndercut(0.2, 0.3)).toBeLessThan(expectedUndercut(0.2, 3));
});

test('a line bears the depth whose undercut leaves its reserve standing', () => {
  const [line, depth] = [0.5, 0.1];
  const undercut = expectedUndercut(depth, null);
  const deepest = deepestFor(line, depth, undercut);
  expect(line - 2 * expectedUndercut(deepest, null)).toBeCloseTo(landReserve.value / 1e3, 9);
  expect(deepestFor(0.01, depth, undercut)).toBe(0);
});
