import { beforeAll, describe, expect, test } from 'vitest';
import { fontFiles } from '../../../src/cli/font-files.ts';
import { defaultReadingUnits } from '../../../src/lib/core/job/reading-units.ts';
import { mostNameLetters } from '../../../src/lib/core/job/typed-bounds.ts';
import { classPack } from '../../../src/lib/core/plan/class-pack.ts';
import { makePapers } from '../../../src/lib/print/make-papers.ts';
import { classTexts, eveningRows } from '../../../src/lib/words/en/class.ts';
import { needLines } from '../../../src/lib/words/en/class-needs.ts';
import { cardTexts, labelTexts, stripTexts, wearTexts } from '../../../src/lib/words/en/papers.ts';
import { amount, cuff, planOf as planned, tokens } from '../../fixtures/jobs.ts';
import { readPages, squeeze } from './printed.ts';
import type { Page } from './printed.ts';

const asked = { stations: 5, learners: 2, adults: 2, minutes: 120 } as const;
const longest = 'W'.repeat(mostNameLetters);
const names = [['Ada', '7', longest]];

const print = async (
  plan: ReturnType<typeof planned>,
  paper: 'A4' | 'Letter',
  stations: number = asked.stations,
  named: readonly (readonly string[])[] = names,
): Promise<readonly Page[]> =>
  readPages(
    await makePapers(
      { kind: 'class', order: { plan, pack: classPack(plan, { ...asked, stations }), paper, names: named } },
      fontFiles(),
    ),
  );

/** The cards alone, between the two sheets before and the papers to hang up. */
const cardsIn = (pages: readonly Page[], stations: number = asked.stations): readonly Page[] =>
  pages.slice(2, 2 + stations);

const salted = () => planned(cuff(), { 'place.use': 'teaching', 'place.room': { value: 400, unit: 'm3' } });

describe.each(['A4', 'Letter'] as const)('the papers of a class on %s', (paper) => {
  const plan = planned(tokens());
  const pack = classPack(plan, asked);
  let pages: readonly Page[];
  beforeAll(async () => {
    pages = await print(plan, paper);
  });
  const held = (n: number, text: string): void => {
    expect(pages[n]?.squeezed).toContain(squeeze(text));
  };

  test('are two sheets for whoever leads, a page a station, what hangs there, and labels', () => {
    // five labels, four on a sheet
    expect(pages).toHaveLength(2 + asked.stations + 2 + 2);
    for (const rule of classTexts.rules) held(0, rule);
    for (const { begins, takes, what } of eveningRows(pack)) held(0, `${begins}${takes}${what}`);
    for (const line of needLines(pack, plan.job.units ?? defaultReadingUnits)) held(1, line);
    cardsIn(pages).forEach((page, n) => {
      expect(page.squeezed).toContain(squeeze(classTexts.station(n + 1, asked.stations)));
      expect(page.squeezed).toContain(squeeze(classTexts.adultStarts));
      // two sets of initials under each hold
      expect(page.squeezed.split(squeeze(classTexts.other))).toHaveLength(4);
      expect(page.squeezed.split(classTexts.adult)).toHaveLength(4);
    });
    held(7, stripTexts.title);
    held(8, wearTexts.title);
  });
  test('have a label for the bath of each station', () => {
    const labels = pages.slice(9);
    expect(labels.map(({ squeezed }) => squeezed.split(squeeze(labelTexts.notFood)).length - 1)).toEqual([
      4, 1,
    ]);
    for (let n = 1; n <= asked.stations; n += 1) held(n <= 4 ? 9 : 10, classTexts.station(n, asked.stations));
  });
  test('say on each card how deep, how long, when to look first, and leave room for readings', () => {
    const [card] = cardsIn(pages);
    const words = card?.squeezed ?? '';
    expect(words).toMatch(/12piecesofbrass70\/30,0\.1mmdeep/);
    expect(words).toMatch(/\d+to\d+min/);
    expect(words).toMatch(/Firstlookafter5min/);
    expect(words).toContain(`${classTexts.readings}minuteVA°C`);
  });
  test('print the names that were typed, and a blank for every other piece', () => {
    const [first, second] = cardsIn(pages);
    expect(first?.squeezed).toContain(`${squeeze(classTexts.pieces)}1Ada273${longest}`);
    expect(second?.squeezed).toMatch(/123456789101112$/);
    expect(second?.squeezed).not.toContain('Ada');
  });
  test('keep everything on the page', () => {
    for (const { items, width, height } of pages) {
      const mm = 25.4 / 72;
      for (const { text, x, y, width: wide } of items) {
        expect(x + wide, text).toBeLessThan(width * mm - 5);
        expect(y, text).toBeLessThan(height * mm - 5);
      }
    }
  });
});

test('a class that bites another depth has that depth, and its minutes, on every card', async () => {
  const shallow = planned(tokens(), { 'piece.depth': amount(42, 'um') });
  for (const { squeezed } of cardsIn(await print(shallow, 'A4'))) {
    expect(squeezed).toContain('0.042mmdeep');
    expect(squeezed).not.toContain('0.1mmdeep');
  }
  expect(shallow.settings?.minutes.value).toBeLessThan(planned(tokens()).settings?.minutes.value ?? 0);
});

test('a station whose supply shows no amps has no column for them', async () => {
  const [card] = cardsIn(await print(salted(), 'A4'));
  expect(card?.squeezed).toContain(`${classTexts.readings}minuteV°C`);
  expect(card?.squeezed).toContain(squeeze(cardTexts.killers[0]));
});

test('twenty stations of a salt-water class are a page each, each whole', async () => {
  const pages = await print(salted(), 'Letter', 20);
  expect(pages).toHaveLength(2 + 20 + 2 + 5);
});

test('twelve pieces with the longest names find room on the card', async () => {
  const all = Array.from({ length: asked.stations }, () => Array.from({ length: 12 }, () => longest));
  const pages = await print(planned(tokens()), 'Letter', asked.stations, all);
  expect(pages).toHaveLength(2 + asked.stations + 2 + 2);
  for (const { squeezed } of cardsIn(pages)) expect(squeezed.split(longest)).toHaveLength(13);
});

test('pieces that find no room on the card have a page of their own', async () => {
  const pages = await print(planned(tokens(), { 'piece.count': 13 }), 'Letter');
  expect(pages).toHaveLength(2 + 2 * asked.stations + 2 + 2);
  expect(pages[3]?.squeezed).toMatch(new RegExp(`^${squeeze(classTexts.station(1, 5))}.*13$`));
  expect(pages[2]?.squeezed).not.toContain(squeeze(classTexts.pieces));
});
