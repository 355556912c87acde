import { beforeAll, describe, expect, test } from 'vitest';
import { label, labelHeight } from '../../../src/lib/print/bath-label.ts';
import { card } from '../../../src/lib/print/bench-card.ts';
import { safeArea } from '../../../src/lib/print/cut-page.ts';
import { scaleBar } from '../../../src/lib/print/drawing/scale-bar.ts';
import { pictogramSide } from '../../../src/lib/print/drawing/pictograms.ts';
import { labelOfPlan } from '../../../src/lib/print/labelled-bath.ts';
import { jobPapers } from '../../../src/lib/print/order.ts';
import { defaultReadingUnits } from '../../../src/lib/core/job/reading-units.ts';
import { figureParts } from '../../../src/lib/words/en/render.ts';
import { examples, planOf, print, readPages, squeeze } from './printed.ts';
import type { Page, Placed } from './printed.ts';

/** A bath that needs more words than any other: long names, four pictograms, five metals already in it. */
const wordiest = () =>
  planOf('evening-class-tokens', (job) => {
    job.bath['dissolved'] = Object.fromEntries(
      ['Ni', 'Fe', 'Pb', 'Sn'].map((metal) => [metal, { value: 123.4, unit: 'mg/L' }]),
    );
  });

/** The metals whose baths have the most to say on their label. */
const ofMetal = (metal: string) => () =>
  planOf('wave-band-cuff', (job) => {
    job.piece['metal'] = metal;
    job.cathode['metal'] = 'stainless';
  });

const cases = [
  ...examples.map((name) => [name, () => planOf(name)] as const),
  ['nickel silver', ofMetal('C75200')] as const,
  ['leaded brass', ofMetal('C36000')] as const,
  ['mild steel', ofMetal('mild-steel')] as const,
  [
    'leaded brass in nitrate',
    () =>
      planOf('evening-class-tokens', (job) => {
        job.piece['metal'] = 'C36000';
        job.cathode['metal'] = 'stainless';
      }),
  ] as const,
  ['the wordiest', wordiest] as const,
];

/** As long as an address with settings gets, and letters as wide as a code has. */
const marks = {
  code: 'WWWW-MMMM',
  carried: `https://bench.example/makers/tools/#start=1${'Ab3-'.repeat(18)}`,
};

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
const isIn = ({ x, y, width, size }: Placed, { left, right, top, bottom }: Box): boolean => {
  // Ascent and descent of the face, from the baseline.
  const em = (size * 25.4) / 72;
  return x >= left && x + width <= right && y - 0.7 * em >= top && y + 0.25 * em <= bottom;
};

describe.each(cases)('the page of cut-outs of %s', (_name, make) => {
  const plan = make();
  let page: Page;
  let origin: { x: number; y: number };
  beforeAll(async () => {
    const pages = await readPages(await print(plan, { ...jobPapers, marks }));
    page = pages.at(-1) as Page;
    const sheetWidth = plan.job.paper === 'A4' ? 210 : 215.9;
    origin = { x: (sheetWidth - safeArea.width) / 2, y: safeArea.margin };
  }, 20_000);

  const box = (x: number, y: number, width: number, height: number, inset: number): Box => ({
    left: origin.x + x + inset - 0.05,
    right: origin.x + x + width - inset + 0.05,
    top: origin.y + y + inset - 0.05,
    bottom: origin.y + y + height - inset + 0.05,
  });

  test('lies in the area that prints on A4 and Letter alike', () => {
    const area = box(0, 0, safeArea.width, safeArea.height, 0);
    expect(page.items.filter((item) => !isIn(item, area))).toEqual([]);
  });

  test('keeps the card 5 mm from trim and fold, in 12 pt and more', () => {
    const onCard = page.items.filter(({ y }) => y < origin.y + card.height);
    const halves = [0, card.face].map((x) => box(x, 0, card.face, card.height, card.safe));
    expect(onCard.length).toBeGreaterThan(20);
    expect(onCard.filter((item) => !halves.some((half) => isIn(item, half)))).toEqual([]);
    expect(onCard.filter(({ size }) => size < 12)).toEqual([]);
  });

  test('has its killer lines in 17 pt and more', () => {
    const large = squeeze(page.items.flatMap(({ size, text }) => (size >= 17 ? [text] : [])).join(''));
    for (const line of ['Piece on +. Plate on −.', 'Supply off before clips.', 'Goggles and gloves.']) {
      expect(large, line).toContain(squeeze(line));
    }
  });

  test('keeps the label inside its frame, its words above its foot', () => {
    const top = card.height + 7;
    const height = labelHeight(labelOfPlan(plan, marks.code));
    const frame = box(0, top, label.width, height, 1);
    const onLabel = page.items.filter(
      ({ x, y }) => x < origin.x + label.width && y > origin.y + top && y < origin.y + top + height + 4,
    );
    expect(onLabel.filter((item) => !isIn(item, frame))).toEqual([]);
    const eyes = onLabel.find(({ text }) => text.startsWith('Eyes:'));
    const never = onLabel.filter(({ y }) => eyes && y < eyes.y);
    expect(never.length).toBeGreaterThan(5);
    expect(Math.max(...never.map(({ y }) => y))).toBeLessThan((eyes?.y ?? 0) - 3);
  });

  test('has the code on card and label, each in one piece', () => {
    expect(page.items.filter(({ text }) => text.includes(marks.code))).toHaveLength(2);
  });

  test('says on the label what metal is in the bath', () => {
    const dissolved = Object.entries(plan.figures).filter(([id]) => id.startsWith('dissolved_metal.'));
    expect(dissolved.length).toBeGreaterThan(0);
    for (const [, figure] of dissolved) {
      expect(page.squeezed).toContain(squeeze(`${figureParts(figure, defaultReadingUnits).number} mg/L`));
    }
  });
});

test('the bar is 100 mm long to the hundredth of a point, and its ticks stand at every millimetre', () => {
  const lines = scaleBar().canvas;
  const [first] = lines;
  expect(first).toMatchObject({ type: 'line', x1: 0 });
  expect(first?.type === 'line' ? first.x2 : 0).toBeCloseTo(283.46, 2);
  expect(lines).toHaveLength(102);
});

test('pictograms are no smaller than the law has them', () => {
  expect(pictogramSide).toBeGreaterThanOrEqual(10);
});
