import { describe, expect, test } from 'vitest';
import { fontFiles } from '../../../src/cli/font-files.ts';
import { makePapers } from '../../../src/lib/print/make-papers.ts';
import type { StencilOrder } from '../../../src/lib/print/order.ts';
import { barScale, copiesOn } from '../../../src/lib/print/stencil-page.ts';
import { readPages, squeeze } from './printed.ts';

const MM = 72 / 25.4;

/** A bar near the upper left corner of a piece of 30 × 40 mm. */
const order: StencilOrder = {
  paper: 'A4',
  loops: [
    [
      [2, 3],
      [12, 3],
      [12, 8],
      [2, 8],
    ],
  ],
  width: 30,
  height: 40,
  scale: 1,
  copies: 1,
  isMirrored: true,
  isNegative: false,
};

interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** Boxes of all paths as they lie on the page, mm from its upper left corner: what a reader would draw. */
async function boxesOf(bytes: Uint8Array): Promise<readonly Box[]> {
  const { getDocument, OPS, Util } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const page = await (await getDocument({ data: bytes.slice(), verbosity: 0 }).promise).getPage(1);
  const [, , , height = 0] = page.view;
  const { fnArray, argsArray } = await page.getOperatorList();
  let at = [1, 0, 0, 1, 0, 0];
  const kept: number[][] = [];
  const boxes: Box[] = [];
  fnArray.forEach((fn, n) => {
    const args = argsArray[n] as unknown[];
    if (fn === OPS.save) kept.push(at);
    else if (fn === OPS.restore) at = kept.pop() ?? at;
    else if (fn === OPS.transform) at = Util.transform(at, args) as number[];
    else if (fn === OPS.constructPath && args[2] !== null) {
      const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = args[2] as number[];
      const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = at;
      const [px, qx] = [a * x0 + c * y0 + e, a * x1 + c * y1 + e];
      const [py, qy] = [b * x0 + d * y0 + f, b * x1 + d * y1 + f];
      boxes.push({
        x0: Math.min(px, qx) / MM,
        x1: Math.max(px, qx) / MM,
        y0: (height - Math.max(py, qy)) / MM,
        y1: (height - Math.min(py, qy)) / MM,
      });
    }
  });
  return boxes;
}

const make = (change: Partial<StencilOrder> = {}) =>
  makePapers({ kind: 'stencil', order: { ...order, ...change } }, fontFiles());
const near = (box: Box, wanted: readonly [number, number, number, number]): boolean =>
  [box.x0, box.y0, box.x1, box.y1].every((one, n) => Math.abs(one - (wanted[n] as number)) < 0.05);

describe('a stencil', () => {
  test('lies on the page in its true size, mirrored from right to left and not from top to bottom', async () => {
    const boxes = await boxesOf(await make());
    // 12 mm of margin; the bar's 2 to 12 mm of 30 become 18 to 28
    expect(boxes.some((box) => near(box, [12 + 18, 12 + 3, 12 + 28, 12 + 8]))).toBe(true);
    const straight = await boxesOf(await make({ isMirrored: false }));
    expect(straight.some((box) => near(box, [12 + 2, 12 + 3, 12 + 12, 12 + 8]))).toBe(true);
    expect(straight.some((box) => near(box, [12 + 18, 12 + 3, 12 + 28, 12 + 8]))).toBe(false);
  });
  test.each(['A4', 'Letter'] as const)('has a bar of 100.0 ± 0.1 mm on %s', async (paper) => {
    const bytes = await make({ paper });
    const bars = (await boxesOf(bytes)).filter(({ x0, x1, y0, y1 }) => x1 - x0 > 80 && y1 - y0 < 0.01);
    expect(bars.length).toBeGreaterThan(0);
    for (const { x0, x1 } of bars) expect(Math.abs(x1 - x0 - 100)).toBeLessThan(0.1);
    const [page] = await readPages(bytes);
    expect(page?.squeezed).toContain(squeeze('Measured ______ mm'));
  });
  test('makes good for a printer that shrinks: a bar of 98 mm makes the next a fiftieth larger', async () => {
    const boxes = await boxesOf(await make({ scale: 100 / 98, isMirrored: false }));
    const s = 100 / 98;
    expect(boxes.some((box) => near(box, [12 + 2 * s, 12 + 3 * s, 12 + 12 * s, 12 + 8 * s]))).toBe(true);
  });
  test('is dark where metal is bare when it is a negative: the whole face, less the bar', async () => {
    const boxes = await boxesOf(await make({ isNegative: true, isMirrored: false }));
    expect(boxes.filter((box) => near(box, [12, 12, 42, 52])).length).toBeGreaterThan(1);
  });
  test('comes as often as asked, and no more than the page holds', async () => {
    const { columns, rows } = copiesOn(order);
    expect([columns, rows]).toEqual([5, 5]);
    const bars = async (copies: number) =>
      (await boxesOf(await make({ copies }))).filter(
        ({ x0, x1, y0, y1 }) => Math.abs(x1 - x0 - 10) < 0.05 && Math.abs(y1 - y0 - 5) < 0.05,
      ).length;
    expect(await bars(4)).toBe(4 * (await bars(1)));
    expect(await bars(99)).toBe(25 * (await bars(1)));
  });
  test('larger than the page is not printed in part: no copy fits', () => {
    expect(copiesOn({ ...order, width: 250 })).toMatchObject({ columns: 0 });
  });
});

test('a printed bar scales what is printed next; one out of reason is not believed', () => {
  expect(barScale(100)).toBe(1);
  expect(barScale(80)).toBe(1.25);
  expect([79.9, 125.1, 0, NaN].map(barScale)).toEqual([null, null, null, null]);
});
