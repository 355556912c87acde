import { beforeAll, describe, expect, test } from 'vitest';
import { defaultReadingUnits } from '../../../src/lib/core/job/reading-units.ts';
import type { FigureId } from '../../../src/lib/core/plan/outcome.ts';
import type { Plan } from '../../../src/lib/core/plan/plan.ts';
import { range } from '../../../src/lib/words/en/locale.ts';
import { figureName } from '../../../src/lib/words/en/figures.ts';
import { printPlan } from '../../../src/lib/words/en/printed-plan.ts';
import { figureParts } from '../../../src/lib/words/en/render.ts';
import { unitSymbol } from '../../../src/lib/words/en/units.ts';
import { examples, planOf, print, readPages, squeeze } from './printed.ts';
import type { Page } from './printed.ts';

describe.each(examples)('the papers of %s', (name) => {
  let plan: Plan;
  let bytes: Uint8Array;
  let pages: Page[];
  let sheet: string;
  beforeAll(async () => {
    plan = planOf(name);
    bytes = await print(plan);
    pages = await readPages(bytes);
    sheet = pages
      .slice(0, -1)
      .map(({ squeezed }) => squeezed)
      .join('');
  }, 20_000);

  test('are the same bytes when made again', async () => {
    expect(Buffer.from(await print(planOf(name))).equals(Buffer.from(bytes))).toBe(true);
  });

  test('have the size of the paper that the maker has', () => {
    const [width, height] = plan.job.paper === 'A4' ? [595.28, 841.89] : [612, 792];
    for (const page of pages) {
      expect(page.width).toBeCloseTo(width, 1);
      expect(page.height).toBeCloseTo(height, 1);
    }
  });

  test("show every figure with the plan's own value, unit and limits", () => {
    for (const [id, figure] of Object.entries(plan.figures)) {
      const limits = figure.low === figure.high ? '' : range(figure.low, figure.high);
      const title = figureName(id as FigureId, defaultReadingUnits);
      const { number, unit } = figureParts(figure, defaultReadingUnits);
      expect(unit).toBe(unitSymbol(figure.unit));
      expect(sheet).toContain(squeeze(`${title}${number}${unit}${limits}`));
    }
  });

  test('say every safety message after the title of its step and before its first line', () => {
    const { cautions, steps } = printPlan(plan);
    expect(cautions.length).toBeGreaterThan(0);
    let from = 0;
    for (const { step, lines } of steps) {
      const first = sheet.indexOf(squeeze(lines[0]?.text ?? ''), from);
      expect(first).toBeGreaterThan(from);
      for (const { text, signal } of cautions.filter((caution) => caution.step === step)) {
        const at = sheet.indexOf(squeeze(signal + text), from);
        expect(at, text).toBeGreaterThan(from);
        expect(at, text).toBeLessThan(first);
      }
      from = first;
    }
  });

  test('give every line of work in order', () => {
    let from = 0;
    for (const { text } of printPlan(plan).steps.flatMap(({ lines }) => lines)) {
      const at = sheet.indexOf(squeeze(text), from);
      expect(at, text).toBeGreaterThanOrEqual(from);
      from = at + 1;
    }
  });

  test('keep each step on one page', () => {
    for (const { lines } of printPlan(plan).steps) {
      const holders = pages.filter(({ squeezed }) => squeezed.includes(squeeze(lines[0]?.text ?? '')));
      expect(
        lines.every(({ text }) => holders.some(({ squeezed }) => squeezed.includes(squeeze(text)))),
      ).toBe(true);
    }
  });

  test('name the data version and who wins, on every page of the sheet', () => {
    for (const { squeezed } of pages.slice(0, -1)) {
      expect(squeezed).toContain(plan.dataVersion);
      expect(squeezed).toContain('Thelabelordatasheetofthebottleinhandwins.');
    }
  });

  test('keep all text of the sheet inside its margins', () => {
    for (const { items, width, height } of pages.slice(0, -1)) {
      const mm = 25.4 / 72;
      for (const { text, x, y, width: length } of items) {
        expect(x, text).toBeGreaterThan(16.9);
        expect(x + length, text).toBeLessThan(width * mm - 16.9);
        expect(y, text).toBeLessThan(height * mm - 8);
      }
    }
  });

  test('are no smaller than can be read', () => {
    for (const { text, size } of pages.flatMap(({ items }) => items)) {
      // A subscript is a part of a letter, not a line of its own.
      if (text.length > 1 && !/^\d+$/.test(text)) expect(size, text).toBeGreaterThanOrEqual(6.86);
    }
  });

  test('end with a page of card, label and bar', () => {
    const last = pages.at(-1)?.squeezed ?? '';
    for (const text of ['NOTFOOD—DONOTDRINK', 'Pieceon+.Plateon−.', 'Measured', '100mm']) {
      expect(last).toContain(text);
    }
  });
});

test('a title of any letters prints, with a mark for each that has no glyph', async () => {
  const title = 'Żółć Привет Ωμέγα 銀 🌸 e\u0301 \u202eﬁ \u0000x';
  const [first] = await readPages(await print(planOf('seed-head-pendant', (job) => (job.title = title))));
  expect(first?.squeezed).toContain(squeeze('Żółć Привет Ωμέγα ? ? é fi x'));
}, 20_000);
