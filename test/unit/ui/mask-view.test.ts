import { describe, expect, test } from 'vitest';
import {
  barePath,
  cutOf,
  exampleShares,
  maskSection,
  section,
} from '../../../src/lib/ui/drawing/mask-view.ts';
import { maskCaption, maskSummary } from '../../../src/lib/words/en/mask.ts';

/** Rows as they are seen, the uppermost first. */
const drawing = (...seen: readonly string[]) => ({
  columns: seen[0]?.length ?? 0,
  rows: seen.length,
  cells: seen.toReversed().join(''),
});
const wide = (path: string): number =>
  [...path.matchAll(/h(\d[\d.]*)v(\d[\d.]*)/g)].reduce((sum, [, w, h]) => sum + Number(w) * Number(h), 0);

describe('from above', () => {
  test('the foot of the drawing is the foot of the piece', () => {
    expect(barePath(drawing('00', '0f'), 20, 20)).toBe('M10.0 10.0h10.0v10.0h-10.0z');
  });
  test('whole cells beside each other are one bar, others show their share', () => {
    expect(barePath(drawing('ffff'), 40, 10)).toBe('M0.0 0.0h40.0v10.0h-40.0z');
    expect(wide(barePath(drawing('8000'), 40, 10))).toBeCloseTo((100 * 8) / 15, 0);
  });
});

describe('the cut', () => {
  test('goes where high and low alternate most, near the middle', () => {
    const one = drawing('0000000000', '0ff00ff00f', '0000ffff00', '0000ffff00');
    expect(cutOf(one).row).toBe(2);
    // the third reaches the rim, which is painted
    expect(cutOf(one).bare).toHaveLength(2);
    expect(cutOf(drawing('0ff0', '0ff0', '0ff0')).row).toBe(1);
  });
  test('leaves the rim under paint, and joins what is too near to be told apart', () => {
    expect(cutOf(drawing('ffffffffff')).bare).toEqual([[0.06, 0.94]]);
    const near = `${'0'.repeat(20)}${'f'.repeat(20)}0${'f'.repeat(20)}${'0'.repeat(39)}`;
    expect(cutOf(drawing(near)).bare).toHaveLength(1);
  });
  test('finds lines finer than its cells, and shows a groove where it finds none', () => {
    expect(cutOf(drawing('0003330000')).bare[0]?.[0]).toBeCloseTo(0.3, 9);
    expect(cutOf(drawing('0'.repeat(100).replace(/.$/, 'f'))).bare).toHaveLength(1);
  });
});

describe('the example', () => {
  test.each([
    ['a pendant', 30, 40],
    ['a band', 150, 15],
    ['a strip', 10, 80],
  ])('fits %s, part of it bare, and has its cut', (_, width, height) => {
    const leaf = exampleShares(width, height);
    expect(leaf.cells).toHaveLength(leaf.columns * leaf.rows);
    expect(leaf.columns / leaf.rows).toBeCloseTo(width / height, -1);
    const bare =
      Array.from(leaf.cells).reduce((sum, one) => sum + parseInt(one, 16) / 15, 0) / leaf.cells.length;
    expect(bare).toBeGreaterThan(0.15);
    expect(bare).toBeLessThan(0.6);
    expect(cutOf(leaf).bare.length).toBeGreaterThan(0);
  });
});

describe('the section', () => {
  const bare = [
    [0.2, 0.4],
    [0.6, 0.8],
  ] as const;
  test('goes down where it is bare, and keeps its height under paint', () => {
    const { metal, grooves, depth } = maskSection(bare, 'one');
    expect(grooves).toEqual([0.3 * section.width, 0.7 * section.width]);
    expect(metal).toContain(`${0.2 * section.width} ${depth}H${0.4 * section.width}`);
    expect(depth).toBeLessThan(section.thickness);
  });
  test('is painted on the face between grooves, round the edges and on the back', () => {
    const { paint } = maskSection(bare, 'one');
    expect(paint.match(/M/g)).toHaveLength(3 + 2 + 1);
    expect(paint).toContain(`M${0.4 * section.width} ${-section.paint}h${0.2 * section.width}`);
    expect(paint).toContain(`M${-section.paint} ${section.thickness}h${section.width + 2 * section.paint}`);
  });
  test('opens on both faces, or falls apart, as the bite is meant', () => {
    expect(maskSection(bare, 'both').paint.match(/M/g)).toHaveLength(3 + 2 + 3);
    expect(maskSection(bare, 'both').metal).toContain(`V${section.thickness}H`);
    expect(maskSection(bare, 'through').metal.match(/M/g)).toHaveLength(3);
    expect(maskSection(bare, 'one').metal.match(/M/g)).toHaveLength(1);
  });
});

test('is told in words: what is painted, what is bare, and what is painted beside the drawing', () => {
  const own = maskCaption({ bite: 'one', isOwn: true });
  expect(own).toMatch(/Painted stays high, bare goes down/);
  expect(own).not.toMatch(/example/);
  expect(maskCaption({ bite: 'one', isOwn: false })).toMatch(/example/);
  expect(maskSummary({ bite: 'one', isOwn: true })).toMatch(/Back, edges and hanger are painted too/);
  expect(maskSummary({ bite: 'both', isOwn: true })).toMatch(/\. Edges and hanger are painted too/);
  expect(maskSummary({ bite: 'through', isOwn: true })).toMatch(/falls out/);
});
