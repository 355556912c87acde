import { describe, expect, test } from 'vitest';
import { maskOf } from '../../../../src/lib/core/mask/mask.ts';
import { measure } from '../../../../src/lib/core/mask/measure.ts';
import { cornersBeside, cornersFault, squared, viewOf } from '../../../../src/lib/core/mask/perspective.ts';
import type { Corners } from '../../../../src/lib/core/mask/perspective.ts';
import type { Grey } from '../../../../src/lib/core/mask/raster.ts';
import { partings } from '../../../../src/lib/core/mask/threshold.ts';
import { drawn, SHEET, targets } from '../../../fixtures/targets.ts';

/** Noise that is the same every time: a linear congruential generator, two draws to a nearly normal one. */
function noise(seed: number): () => number {
  let state = seed;
  const uniform = () => (state = (1664525 * state + 1013904223) >>> 0) / 2 ** 32;
  return () => uniform() + uniform() + uniform() - 1.5;
}

/** A picture taken askew: the sheet in perspective, light falling off to one side, blur and noise. */
function photographed(sheet: Grey & { perMm: number }, corners: Corners): Grey {
  const [width, height] = [900, 640];
  const back = viewOf(corners, sheet.width, sheet.height);
  // from the picture back to the sheet: the same homography of the inverse corners, found by sampling
  const data = new Uint8Array(width * height).fill(90);
  const sums = new Float64Array(width * height);
  const counts = new Float64Array(width * height);
  const step = 0.35;
  for (let y = step / 2; y < sheet.height; y += step)
    for (let x = step / 2; x < sheet.width; x += step) {
      const [u, v] = back(x, y);
      const n = Math.floor(v) * width + Math.floor(u);
      sums[n] = (sums[n] ?? 0) + (sheet.data[Math.floor(y) * sheet.width + Math.floor(x)] as number);
      counts[n] = (counts[n] ?? 0) + 1;
    }
  const random = noise(7);
  for (let n = 0; n < data.length; n += 1) {
    const light = 0.4 + 0.6 * ((n % width) / width);
    const here = (counts[n] as number) > 0 ? (sums[n] as number) / (counts[n] as number) : 90;
    data[n] = Math.min(255, Math.max(0, here * light + 10 * random()));
  }
  // blur: each pixel with its eight neighbours
  const blurred = data.slice();
  for (let y = 1; y < height - 1; y += 1)
    for (let x = 1; x < width - 1; x += 1) {
      let sum = 0;
      for (let dy = -1; dy <= 1; dy += 1)
        for (let dx = -1; dx <= 1; dx += 1) sum += data[(y + dy) * width + x + dx] as number;
      blurred[y * width + x] = Math.round(sum / 9);
    }
  return { width, height, data: blurred };
}

const corners: Corners = [
  [120, 90],
  [800, 60],
  [840, 560],
  [70, 520],
];

/** Lines as wide as a photograph shows, every second of them. */
const sturdy = targets.filter(({ narrowest }) => narrowest >= 1).filter((_, n) => n % 2 === 0);

describe('a photograph taken askew, in uneven light', () => {
  test.each(sturdy)('$name: area within 5 %', ({ inside, area }) => {
    const perMm = 25;
    const flat = squared(
      photographed(drawn(inside, { dpi: 400, tones: [70, 220] }), corners),
      corners,
      SHEET.width * perMm,
      SHEET.height * perMm,
    );
    const [best] = partings(flat) ?? [];
    if (!best) throw new Error('no two tones');
    const found = measure(maskOf(best.grey, best.level, 'bare', perMm));
    expect(Math.abs(found.area / area - 1), `${found.area} of ${area}`).toBeLessThan(0.05);
  });
});

test('light that falls to two fifths is evened out, even light is left', () => {
  const { inside } = targets.find(({ name }) => name === 'the letter E') ?? { inside: () => false };
  const sheet = drawn(inside, { dpi: 300, tones: [70, 220] });
  expect(partings(sheet)?.[0].method).toBe('whole');
  const data = sheet.data.map((grey, n) => grey * (0.4 + (0.6 * (n % sheet.width)) / sheet.width));
  expect(partings({ ...sheet, data })?.[0].method).toBe('local');
});

describe('four corners', () => {
  test('put each corner of the flat where it was tapped', () => {
    const view = viewOf(corners, 85.6, 53.98);
    for (const [n, [x, y]] of [
      [0, 0],
      [85.6, 0],
      [85.6, 53.98],
      [0, 53.98],
    ].entries()) {
      const [u, v] = view(x as number, y as number);
      expect(u).toBeCloseTo(corners[n]?.[0] ?? NaN, 6);
      expect(v).toBeCloseTo(corners[n]?.[1] ?? NaN, 6);
    }
  });
  test('tapped crosswise, turned over or on one spot are refused', () => {
    const [a, b, c, d] = corners;
    expect(cornersFault(corners)).toBeNull();
    expect(cornersFault([a, c, b, d])).toEqual({ id: 'crossed' });
    expect(cornersFault([b, a, d, c])).toEqual({ id: 'crossed' });
    expect(cornersFault([a, [a[0] + 5, a[1]], [a[0] + 5, a[1] + 5], [a[0], a[1] + 5]])).toEqual({
      id: 'flat',
    });
  });
});

describe('a bank card beside the piece', () => {
  /** Card and piece flat on a table of 200 × 150 mm, seen askew. */
  const table: Corners = [
    [40, 80],
    [1500, 30],
    [1580, 1130],
    [10, 1050],
  ];
  const seen = viewOf(table, 200, 150);
  const placed = (x: number, y: number, width: number, height: number, angle: number): Corners => {
    const at = (u: number, v: number) =>
      seen(x + u * Math.cos(angle) - v * Math.sin(angle), y + u * Math.sin(angle) + v * Math.cos(angle));
    return [at(0, 0), at(width, 0), at(width, height), at(0, height)];
  };
  const CARD = [85.6, 53.98] as const;
  test.each([
    ['lying', placed(20, 80, 85.6, 53.98, 0.1)],
    ['upright', placed(20, 60, 53.98, 85.6, -0.05)],
  ])('%s, tells where all corners of the piece are, and how wide it is', (_, card) => {
    const piece = placed(110, 20, 30, 40, 0.3);
    const { corners: found, across } = cornersBeside(card, CARD, [piece[0], piece[1]], 30, 40);
    expect(across).toBeCloseTo(30, 6);
    for (const [n, [x, y]] of piece.entries()) {
      expect(found[n]?.[0]).toBeCloseTo(x, 6);
      expect(found[n]?.[1]).toBeCloseTo(y, 6);
    }
  });
  test('shows when the piece is not as wide as was said', () => {
    const piece = placed(110, 20, 28, 40, 0);
    const card = placed(20, 80, 85.6, 53.98, 0);
    expect(cornersBeside(card, CARD, [piece[0], piece[1]], 30, 40).across).toBeCloseTo(28, 6);
  });
});
