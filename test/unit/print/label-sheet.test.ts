import { beforeAll, describe, expect, test } from 'vitest';
import { label } from '../../../src/lib/print/bath-label.ts';
import { standingBar } from '../../../src/lib/print/drawing/scale-bar.ts';
import { nextFree, placeOf, places, sheetOfLabels, spread } from '../../../src/lib/print/label-sheet.ts';
import { labelOfShelf } from '../../../src/lib/print/labelled-bath.ts';
import type { ShelfBath } from '../../../src/lib/print/labelled-bath.ts';
import { printLabels, readPages, squeeze } from './printed.ts';
import type { Page } from './printed.ts';

const silver: ShelfBath = {
  name: 'SILVER 1',
  group: 'silver',
  salt: 'NaNO3',
  strength: 60,
  dissolved: { Ag: 1234, Cu: 98 },
  madeOn: '24 Nov 2025',
  lastUsedOn: '3 Jan 2026',
  chargeAh: 0.42,
};
/** Long names, every metal of its group, all the pictograms there are. */
const wordiest: ShelfBath = {
  ...silver,
  name: 'COPPER AND BRASS 12',
  group: 'copper and brass',
  salt: 'CuSO4.5H2O',
  dissolved: { Cu: 12_345, Zn: 2345, Ni: 345, Fe: 123, Pb: 99, Sn: 45 },
};

describe('places on a sheet', () => {
  test('come row by row, from the first free one on, and over onto the next sheet', () => {
    expect(spread(3, 2)).toEqual([
      { sheet: 0, place: 2 },
      { sheet: 0, place: 3 },
      { sheet: 1, place: 0 },
    ]);
    expect(nextFree(3, 2)).toBe(1);
    expect(nextFree(2, 2)).toBe(0);
  });
  test('leave no label over another', () => {
    for (let n = 0; n < places; n += 1) {
      const { x, y } = placeOf(n);
      expect(x % (label.width + sheetOfLabels.apart)).toBe(0);
      expect(y % (sheetOfLabels.tallest + sheetOfLabels.apart)).toBe(0);
    }
    expect(new Set([0, 1, 2, 3].map((n) => JSON.stringify(placeOf(n)))).size).toBe(4);
  });
});

describe.each(['A4', 'Letter'] as const)('labels on %s', (paper) => {
  let pages: Page[];
  beforeAll(async () => {
    const bytes = await printLabels({
      paper,
      skip: 2,
      baths: [
        { bath: wordiest, copies: 2 },
        { bath: silver, copies: 3 },
      ],
    });
    pages = await readPages(bytes);
  }, 20_000);

  test('take as many sheets as they need, on their sides', () => {
    expect(pages).toHaveLength(2);
    const [width, height] = paper === 'A4' ? [841.89, 595.28] : [792, 612];
    for (const page of pages) {
      expect(page.width).toBeCloseTo(width, 0);
      expect(page.height).toBeCloseTo(height, 0);
    }
  });

  test('leave the used places empty and keep every word inside its frame and off the edge', () => {
    const [first, second] = pages as [Page, Page];
    const right = sheetOfLabels.margin + 2 * label.width + sheetOfLabels.apart;
    const inLabels = (page: Page) => page.items.filter(({ x, text }) => x < right && text.trim() !== '');
    const { y: secondRow } = placeOf(2);
    expect(inLabels(first).every(({ y }) => y > sheetOfLabels.margin + secondRow)).toBe(true);
    for (const page of [first, second]) {
      for (const { x, y, width, size } of inLabels(page)) {
        const column = x < sheetOfLabels.margin + label.width ? 0 : 1;
        const left = sheetOfLabels.margin + placeOf(column).x;
        expect(x).toBeGreaterThan(left + 1);
        expect(x + width).toBeLessThan(left + label.width - 1);
        expect(y + (0.25 * size * 25.4) / 72).toBeLessThan((page.height * 25.4) / 72 - sheetOfLabels.margin);
      }
      for (const { x, width } of page.items)
        expect(x + width).toBeLessThan((page.width * 25.4) / 72 - sheetOfLabels.margin + 0.1);
    }
  });

  test('say what the bath is and holds now, its dangers and its days', () => {
    const [first, second] = pages as [Page, Page];
    for (const words of [
      'COPPER AND BRASS 12',
      'It holds at most copper 12 000 mg/L',
      'Danger',
      'lead 99 mg/L',
    ])
      expect(first.squeezed).toContain(squeeze(words));
    for (const words of [
      'SILVER 1',
      'sodium nitrate, 60 g/L',
      'silver 1200 mg/L',
      'Made on 24 Nov 2025',
      '0.42 A·h',
    ])
      expect(second.squeezed).toContain(squeeze(words));
    expect(second.squeezed.split('SILVER1').length - 1).toBe(3);
  });
});

test('the standing bar is 100 mm long to the hundredth of a point', () => {
  const [line] = standingBar().canvas;
  expect(line?.type === 'line' ? line.y2 - line.y1 : 0).toBeCloseTo(283.46, 2);
});

test('a bath of no known salt still says what it must never meet', () => {
  const odd = labelOfShelf({ ...silver, group: 'unknown', salt: 'no such salt', dissolved: {} });
  expect(odd.hazards).toBeNull();
  expect(odd.never).toMatch(/never with acid/i);
});
