import { expect, test } from 'vitest';
import { depthsIn, withDepth } from '../../../src/lib/session/depth-points.ts';

test('a depth that cannot be read for a while takes no other along', () => {
  const broken = withDepth([100, 120, 90], 0, null);
  expect(depthsIn(broken)).toEqual([120, 90]);
  expect(depthsIn(withDepth(broken, 0, 110))).toEqual([110, 120, 90]);
});

test('a place further on may be told before the ones between', () => {
  expect(withDepth([], 2, 80)).toEqual([null, null, 80]);
});
