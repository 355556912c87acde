import 'fake-indexeddb/auto';
import { beforeAll, expect, test } from 'vitest';
import { classPack } from '../../../src/lib/core/plan/class-pack.ts';
import type { ClassAsked } from '../../../src/lib/core/plan/class-pack.ts';
import { connectNotebook } from '../../../src/lib/notebook/store.ts';
import type { Notebook } from '../../../src/lib/notebook/store.ts';
import { classPlan, depthOf, fittedPlan } from '../../../src/lib/session/class.ts';
import { planDraft } from '../../../src/lib/work/plan-draft.ts';
import type { Planner } from '../../../src/lib/work/planner.ts';
import { pendantDraft } from '../../fixtures/job-at.ts';
import { aJob } from '../notebook/records-for-test.ts';

/** Plans at once, on this side of the worker. */
const planner = { plan: (files) => Promise.resolve(planDraft(files)) } as Pick<Planner, 'plan'> as Planner;
const asked: ClassAsked = { stations: 4, learners: 2, adults: 2, minutes: 120 };

let book: Notebook;
beforeAll(async () => {
  book = await connectNotebook();
  await book.saveJob(aJob('pendant', { draft: pendantDraft }), 'relaxed');
  const used = { 'bath.from': 'shelf', 'bath.record': 'SILVER 1', 'bath.dissolved': '{"Ag":700}' };
  await book.saveJob(aJob('used', { draft: { ...pendantDraft, ...used } }), 'relaxed');
  await book.saveJob(aJob('polished', { draft: { ...pendantDraft, 'piece.polish': '0.02' } }), 'relaxed');
  await book.saveJob(aJob('open', { draft: { ...pendantDraft, 'supply.kind': '' } }), 'relaxed');
});

test('a class mixes its own baths, whatever bath the job itself was bitten in', async () => {
  const plan = await classPlan(book, planner, 'used');
  expect(plan?.job.bath).toMatchObject({ record: null, dissolved: {} });
  expect(plan?.job.place.use).toBe('teaching');
  expect(plan && classPack(plan, asked).salt).toBeGreaterThan(0);
});

test('no class is planned with a supply that nobody has chosen', async () => {
  expect(await classPlan(book, planner, 'open')).toBeNull();
  expect(await classPlan(book, planner, 'no such')).toBeNull();
});

test.each(['', 'pendant', 'polished'])(
  'a depth that is chosen for a class is the whole of it, and it fits (job "%s")',
  async (id) => {
    const plan = await classPlan(book, planner, id);
    if (plan === null) throw new Error('no plan');
    const short = { ...asked, minutes: 100 };
    const { over, fittingDepth } = classPack(plan, short);
    expect(over).toBeGreaterThan(0);
    if (fittingDepth === null) throw new Error('no depth');
    const fitted = await fittedPlan(book, planner, id, short, fittingDepth);
    if (fitted === null) throw new Error('nothing fits');
    expect(fitted.um).toBeLessThanOrEqual(fittingDepth);
    expect(depthOf(fitted.plan)).toBeCloseTo(fitted.um, 9);
    expect(classPack(fitted.plan, short).over).toBe(0);
  },
);
