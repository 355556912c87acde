import { beforeAll, describe, expect, test } from 'vitest';
import { fontFiles } from '../../../src/cli/font-files.ts';
import { classPack } from '../../../src/lib/core/plan/class-pack.ts';
import { makePapers } from '../../../src/lib/print/make-papers.ts';
import { classTexts } from '../../../src/lib/words/en/class.ts';
import { cuff, planOf as planned, tokens } from '../../fixtures/jobs.ts';
import { readPages, squeeze } from './printed.ts';
import type { Page } from './printed.ts';

const asked = { stations: 5, learners: 2, adults: 2, minutes: 120 } as const;

describe.each(['A4', 'Letter'] as const)('the papers of a class on %s', (paper) => {
  let pages: readonly Page[];
  beforeAll(async () => {
    const plan = planned(tokens());
    const bytes = await makePapers(
      { kind: 'class', order: { plan, pack: classPack(plan, asked), paper } },
      fontFiles(),
    );
    pages = await readPages(bytes);
  });

  test('are a sheet for whoever leads, and a page for each station', () => {
    expect(pages).toHaveLength(1 + asked.stations);
    for (const rule of classTexts.rules) expect(pages[0]?.squeezed).toContain(squeeze(rule));
    pages.slice(1).forEach((page, n) => {
      expect(page.squeezed).toContain(squeeze(classTexts.station(n + 1, asked.stations)));
      expect(page.squeezed).toContain(squeeze(classTexts.adultStarts));
      // two sets of initials under each hold
      expect(page.squeezed.split(squeeze(classTexts.other))).toHaveLength(4);
      expect(page.squeezed.split(classTexts.adult)).toHaveLength(4);
    });
  });
  test('keep everything on the page', () => {
    for (const { items, width, height } of pages) {
      for (const { text, x, y, width: wide } of items) {
        expect(x + wide, text).toBeLessThan(width - 10);
        expect(y, text).toBeLessThan(height - 10);
      }
    }
  });
});

test('twenty stations of a salt-water class are twenty-one pages, each whole', async () => {
  const plan = planned(cuff(), { 'place.use': 'teaching', 'place.room': { value: 400, unit: 'm3' } });
  const pack = classPack(plan, { ...asked, stations: 20 });
  const bytes = await makePapers({ kind: 'class', order: { plan, pack, paper: 'Letter' } }, fontFiles());
  expect(await readPages(bytes)).toHaveLength(21);
});
