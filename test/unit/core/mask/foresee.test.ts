import { describe, expect, test } from 'vitest';
import { designParts } from '../../../../src/lib/core/mask/design.ts';
import type { Design, Wishes } from '../../../../src/lib/core/mask/design.ts';
import { compensated, foresee, greatestDepth, undercutMask } from '../../../../src/lib/core/mask/foresee.ts';
import { inverted, maskOf, resistOf } from '../../../../src/lib/core/mask/mask.ts';
import { measure } from '../../../../src/lib/core/mask/measure.ts';
import { cleaned, isPlaceOf, middleOf } from '../../../../src/lib/core/mask/parts.ts';
import { greyOf, shrinkOf } from '../../../../src/lib/core/mask/raster.ts';
import type { PictureFault } from '../../../../src/lib/core/mask/raster.ts';
import { sharesOf } from '../../../../src/lib/core/mask/shares.ts';
import { partings, usableLevel } from '../../../../src/lib/core/mask/threshold.ts';
import { onePointFewer, onePointMore, roundedOutline } from '../../../../src/lib/core/mask/traced.ts';
import { drawn, SHEET } from '../../../fixtures/targets.ts';
import type { Figure } from '../../../fixtures/targets.ts';

/** The figure is resist on bare metal. */
const resist = (inside: Figure, dpi = 600) => {
  const picture = drawn(inside, { dpi });
  return maskOf(picture, 130, 'resist', picture.perMm);
};
const resistArea = (mask: ReturnType<typeof resist>): number =>
  resistOf(mask).reduce((sum, one) => sum + one, 0) / mask.perMm ** 2;
const square: Figure = (x, y) => Math.abs(x) < 4 && Math.abs(y) < 4;

describe('undercut, against the exact offset curve', () => {
  test('takes as much off a straight edge as it creeps', () => {
    const bar = resist((_, y) => Math.abs(y) < 3);
    for (const undercut of [0.1, 0.25, 0.6]) {
      const left = measure(undercutMask(bar, undercut)).line?.width ?? 0;
      expect(Math.abs(left - (6 - 2 * undercut)) * bar.perMm).toBeLessThanOrEqual(1);
    }
  });
  test('leaves the corners of a square sharp from within: (8 − 2u)²', () => {
    const mask = resist(square);
    for (const undercut of [0.2, 0.5, 1])
      expect(resistArea(undercutMask(mask, undercut)) / (8 - 2 * undercut) ** 2).toBeCloseTo(1, 1.5);
  });
  test('rounds the corners of a square hole: 8² + 4·8·u + π·u² less its corners', () => {
    const mask = inverted(resist(square));
    for (const undercut of [0.2, 0.5, 1]) {
      const exact = 64 + 32 * undercut + Math.PI * undercut ** 2;
      expect(Math.abs(measure(undercutMask(mask, undercut)).area / exact - 1)).toBeLessThan(0.015);
    }
  });
  test('compensation grows the resist by it, and the bite brings it back', () => {
    const mask = resist(square);
    const grown = compensated(mask, 0.5);
    expect(Math.abs(resistArea(grown) / (64 + 16 + Math.PI / 4) - 1)).toBeLessThan(0.015);
    expect(Math.abs(resistArea(undercutMask(grown, 0.5)) / 64 - 1)).toBeLessThan(0.02);
  });
});

describe('what a depth leaves', () => {
  const two: Figure = (x, y) =>
    (Math.abs(x) < 6 && Math.abs(y - 3) < 0.2) || (Math.abs(x) < 6 && Math.abs(y + 3) < 1);
  test('a line thinner than twice the undercut is lost, a thicker one stays', () => {
    const mask = resist(two);
    expect(foresee(mask, 0.1).lost).toHaveLength(0);
    const { lost, left } = foresee(mask, 0.25);
    expect(lost).toHaveLength(1);
    expect((lost[0]?.box[1] ?? 0) / mask.perMm).toBeCloseTo(8 + 3 - 0.2, 0);
    expect(left).toBeLessThan(0.75);
  });
  test('the greatest depth keeps every line: a little more loses one', () => {
    const mask = resist(two);
    const line = measure(mask).line?.width ?? 0;
    const depth = greatestDepth(line, 0.8, 0);
    expect(foresee(mask, 0.8 * depth * 0.9).lost).toHaveLength(0);
    expect(foresee(mask, 0.8 * depth * 1.15).lost).toHaveLength(1);
    expect(greatestDepth(0.2, 0.8, 0.3)).toBe(0);
  });
});

describe('specks and pinholes', () => {
  const dusty: Figure = (x, y) =>
    (square(x, y) && Math.hypot(x - 1, y) > 0.1) ||
    Math.hypot(x - 8, y - 5) < 0.12 ||
    Math.hypot(x + 8, y) < 1;
  test('are listed below the size that is meant, and no larger ones', () => {
    const { pinholes, specks } = cleaned(resist(dusty), 0.5).specks;
    expect(pinholes).toHaveLength(1);
    expect(specks).toHaveLength(1);
  });
  test('are filled and taken away, and nothing else changes', () => {
    const clean = cleaned(resist(dusty), 0.5).mask;
    expect(cleaned(clean, 0.5).specks).toEqual({ pinholes: [], specks: [] });
    expect(Math.abs(resistArea(clean) / (64 + Math.PI) - 1)).toBeLessThan(0.01);
  });
});

describe('specks and pinholes, one by one', () => {
  const dusty: Figure = (x, y) =>
    (square(x, y) && Math.hypot(x - 1, y) > 0.1 && Math.hypot(x + 2, y - 2) > 0.1) ||
    Math.hypot(x - 8, y - 5) < 0.12;
  test('the kept one stays, the others go', () => {
    const mask = resist(dusty);
    const all = cleaned(mask, 0.5).specks;
    expect([all.pinholes.length, all.specks.length]).toEqual([2, 1]);
    // the sheet's middle is the origin of the figures
    const place = all.pinholes.map((part) => middleOf(part, mask.perMm));
    const kept = place.find(([x]) => x > SHEET.width / 2);
    if (!kept) throw new Error('no pinhole right of the middle');
    const once = cleaned(mask, 0.5, [kept]);
    expect(once.specks).toEqual(all);
    const left = cleaned(once.mask, 0.5).specks;
    expect(left.specks).toEqual([]);
    expect(left.pinholes.map((part) => middleOf(part, mask.perMm))).toEqual([kept]);
    expect(kept[0] - SHEET.width / 2).toBeCloseTo(1, 1);
  });
});

describe('a picture worked out part by part', () => {
  const wishes: Wishes = {
    corners: null,
    width: SHEET.width,
    height: SHEET.height,
    outline: 'rectangle',
    darkIs: 'resist',
    method: null,
    level: null,
    least: 0.2,
    clean: true,
    keep: [],
    undercut: 0.1,
  };
  const run = (own: Partial<Wishes>): { told: readonly number[]; made: Design | PictureFault } => {
    const parts = designParts(drawn(square, { dpi: 300 }), { ...wishes, ...own });
    const told: number[] = [];
    for (;;) {
      const part = parts.next();
      if (part.done) return { told, made: part.value };
      told.push(part.value);
    }
  };
  test('tells each time that it is farther', () => {
    const { told, made } = run({});
    expect(told.length).toBeGreaterThan(3);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    const area = 'id' in made ? NaN : made.measured.area;
    expect(Math.abs(area / (SHEET.width * SHEET.height - 64) - 1)).toBeLessThan(0.005);
  });
  test('counts within a traced outline alone', () => {
    // a triangle: left half of the sheet, below its diagonal
    const traced = [
      [0, 0],
      [1, 1],
      [0, 1],
    ] as const;
    const { made } = run({ outline: traced });
    if ('id' in made) throw new Error(made.id);
    const half = (SHEET.width * SHEET.height) / 2;
    // the square's own half lies under resist
    expect(Math.abs(made.measured.area / (half - 32) - 1)).toBeLessThan(0.01);
    expect(made.measured.share).toBeCloseTo((half - 32) / half, 2);
  });
  test('leaves crosswise corners be', () => {
    const crossed = [
      [0, 0],
      [10, 10],
      [10, 0],
      [0, 10],
    ] as const;
    expect(run({ corners: crossed }).made).toEqual({ id: 'crossed' });
  });
});

describe('points of a traced outline', () => {
  test('one more stands in the middle of the longest side, one fewer takes that which matters least', () => {
    const triangle = [
      [0, 0],
      [1, 0],
      [0, 0.5],
    ] as const;
    const more = onePointMore(triangle);
    expect(more).toEqual([
      [0, 0],
      [1, 0],
      [0.5, 0.25],
      [0, 0.5],
    ]);
    expect(onePointFewer(more)).toEqual(triangle);
    expect(onePointFewer(triangle)).toEqual(triangle);
  });
  test('begin on the rim of the picture, going round', () => {
    const points = roundedOutline();
    expect(points).toHaveLength(8);
    for (const [x, y] of points) expect(Math.hypot(x - 0.5, y - 0.5)).toBeCloseTo(0.5, 9);
    expect(points[0]?.[1]).toBeCloseTo(0, 9);
  });
});

describe('a picture that cannot be used', () => {
  test('without two tones is said to be so', () => {
    expect(partings({ width: 40, height: 40, data: new Uint8Array(1600).fill(200) })).toBeNull();
    const faint = Uint8Array.from({ length: 1600 }, (_, n) => 200 + (n % 7));
    expect(partings({ width: 40, height: 40, data: faint })).toBeNull();
  });
  test('too large is shrunk to twelve million pixels', () => {
    expect(shrinkOf(6000, 4000) ** 2 * 24e6).toBeCloseTo(12e6, 0);
    expect(shrinkOf(3000, 2000)).toBe(1);
  });
  test('transparent counts as white', () => {
    const rgba = new Uint8ClampedArray([0, 0, 0, 255, 0, 0, 0, 0, 255, 255, 255, 255, 255, 0, 0, 255]);
    expect([...greyOf(rgba, 4, 1).data]).toEqual([0, 255, 255, 54]);
  });
});

test('what the field sees of a design keeps its bare area', () => {
  const mask = resist(square);
  const { columns, rows, cells } = sharesOf(mask);
  expect([columns, rows]).toEqual([24, 16]);
  const share = Array.from(cells).reduce((sum, one) => sum + parseInt(one, 16), 0) / 15 / cells.length;
  expect(share).toBeCloseTo(measure(mask).share, 2);
  // rows run upwards from the foot
  const half = resist((_, y) => y < 0);
  expect(sharesOf(half).cells[0]).toBe('f');
});

test('a kept place belongs to the speck it was put on', () => {
  const speck = { x: 3, y: 4, width: 0.2 };
  expect(isPlaceOf(speck, [3.1, 4])).toBe(true);
  expect(isPlaceOf(speck, [3.2, 4])).toBe(false);
});

test('a level leaves both tones something', () => {
  expect([-5, 0, 99.6, 254, 300].map(usableLevel)).toEqual([1, 1, 100, 254, 254]);
});
