import { expect, test } from 'vitest';
import {
  areaOfShare,
  designCm2,
  facesCm2,
  oneFaceCm2,
  shareOfArea,
} from '../../../src/lib/session/bare-area.ts';
import { pendant, planOf } from '../../fixtures/jobs.ts';

const { piece } = planOf(pendant()).job;
const both = { ...piece, faces: 'both' as const, faceArea: (2 * piece.faceArea) as typeof piece.faceArea };

test('a face of 30 by 40 mm is 12 cm², two are 24', () => {
  expect([facesCm2(piece), oneFaceCm2(piece)]).toEqual([12, 12]);
  expect([facesCm2(both), oneFaceCm2(both)]).toEqual([24, 12]);
});

test('share and area say the same the other way round', () => {
  expect(areaOfShare(piece, 35)).toBeCloseTo(4.2, 12);
  expect(shareOfArea(piece, 4.2)).toBeCloseTo(35, 12);
});

test('a drawing is laid on every bitten face', () => {
  expect(designCm2(piece, 421.6)).toBe(4.22);
  expect(designCm2(both, 421.6)).toBe(8.43);
});
