import { describe, expect, test } from 'vitest';
import { solveCell } from '../../../src/lib/core/cell/solved-field.ts';
import { bandsOf } from '../../../src/lib/core/field/depth-map.ts';
import { defaultReadingUnits } from '../../../src/lib/core/job/reading-units.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { bandText, biteMapTexts } from '../../../src/lib/words/en/bite-map.ts';
import { sheetTexts } from '../../../src/lib/words/en/papers.ts';
import { amount, jobOf, patched, pendant } from '../../fixtures/jobs.ts';
import { print, readPages, squeeze } from './printed.ts';

/** Stripes on the left, all bare on the right. */
const design = {
  columns: 30,
  rows: 40,
  cells: Array.from({ length: 1200 }, (_, n) => (n % 30 < 15 ? (n % 3 === 0 ? 'f' : '0') : 'f')).join(''),
};
const drawn = () =>
  planJob(
    jobOf(patched(pendant(), { 'piece.design': design, 'piece.openArea': amount(8, 'cm2') })),
    solveCell,
  );

describe('where a drawing is bitten deepest', () => {
  test('stands on the job sheet, each band with its depth, marked as a model', async () => {
    const plan = drawn();
    if (!plan.map) throw new Error('no map');
    const sheet = (await readPages(await print(plan))).map(({ squeezed }) => squeezed).join('');
    expect(sheet).toContain(squeeze(biteMapTexts.title));
    expect(sheet).toContain(squeeze(biteMapTexts.model));
    const bands = bandsOf(plan.map, plan.job.piece.depth * 1e6);
    expect(bands.length).toBeGreaterThan(2);
    for (const band of bands) expect(sheet).toContain(squeeze(bandText(band, defaultReadingUnits)));
    expect(bands.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });
  test('is not in the code at the head of the sheet, which says so', async () => {
    const marked = { kinds: ['sheet'], marks: { code: 'ABCD EFGH', carried: 'settings' } } as const;
    const says = async (plan: ReturnType<typeof planJob>) =>
      (await readPages(await print(plan, marked))).some(({ squeezed }) =>
        squeezed.includes(squeeze(sheetTexts.drawingStays)),
      );
    expect(await says(drawn())).toBe(true);
    expect(await says(planJob(jobOf(pendant()), solveCell))).toBe(false);
  });
  test('is left out without a drawing', async () => {
    const plan = planJob(jobOf(pendant()), solveCell);
    expect(plan.map).toBeNull();
    const sheet = (await readPages(await print(plan))).map(({ squeezed }) => squeezed).join('');
    expect(sheet).not.toContain(squeeze(biteMapTexts.title));
  });
  test('is frozen with its plan, and as large as the piece', () => {
    const { map, job } = drawn();
    expect(Object.isFrozen(map) && Object.isFrozen(map?.relative)).toBe(true);
    expect(map?.columns.at(-1)).toBeCloseTo(job.piece.width, 9);
    expect(map?.rows.at(-1)).toBeCloseTo(job.piece.height, 9);
  });
});
