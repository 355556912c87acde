import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { bathNow, withEvent } from '../../../src/lib/notebook/bath-ledger.ts';
import { connectNotebook } from '../../../src/lib/notebook/store.ts';
import type { Draft } from '../../../src/lib/session/draft.ts';
import { filledDraft, jobFileOf, unchosenIn } from '../../../src/lib/session/job-file.ts';
import { changePreferences, keptPreferences } from '../../../src/lib/session/preferences.ts';
import { answersFor } from '../../../src/lib/session/shelf.ts';
import {
  isMisfit,
  lineOf,
  staleBath,
  staleIn,
  staleRate,
  staleSupply,
} from '../../../src/lib/session/stale.ts';
import { planDraft } from '../../../src/lib/work/plan-draft.ts';
import { staleMark, staleText } from '../../../src/lib/words/en/stale.ts';
import { jobOf } from '../../fixtures/jobs.ts';
import { pendantDraft } from '../../fixtures/job-at.ts';
import { aBath } from '../notebook/records-for-test.ts';

const bath = aBath('b');
const shelved = { bath, now: bathNow(bath) };
const taken: Draft = { ...pendantDraft, ...answersFor(shelved) };
const workshop = {
  'supply.kind': 'adapter',
  'supply.amps': 'no',
  'supply.volts': '5',
  'supply.maxAmps': '2',
};
const adapter: Draft = { ...pendantDraft, ...workshop };
const nothing = { earlier: null, now: null };
const whys = (found: readonly { readonly why: string; readonly line: string }[]): string[] =>
  found.map(({ why, line }) => `${line}: ${why}`);

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});

describe('a bath that a job was planned with', () => {
  test('fits while it stands as it was', () => {
    expect(staleBath(taken, { all: [shelved], suitable: [shelved] })).toEqual([]);
    expect(staleBath(pendantDraft, { all: [], suitable: [] })).toEqual([]);
    // one from a sheet has no name on any shelf here
    expect(staleBath({ ...taken, 'bath.record': '' }, { all: [], suitable: [] })).toEqual([]);
  });
  test('no longer fits once it is gone, was used since, or is for another metal', () => {
    expect(whys(staleBath(taken, { all: [], suitable: [] }))).toEqual(['bath: bath-gone']);
    const gone = withEvent(bath, { type: 'handed-over', at: 1, to: '' });
    const away = [{ bath: gone, now: bathNow(gone) }];
    expect(whys(staleBath(taken, { all: away, suitable: [] }))).toEqual(['bath: bath-gone']);
    expect(whys(staleBath(taken, { all: [shelved], suitable: [] }))).toEqual(['bath: bath-of-others']);
    const more = withEvent(bath, { type: 'used', at: 1, job: 'j', chargeAh: 1, tookMg: { Ag: 5 } });
    const used = [{ bath: more, now: bathNow(more) }];
    expect(whys(staleBath(taken, { all: used, suitable: used }))).toEqual(['bath: bath-changed']);
  });
});

describe('a supply that a job was planned with', () => {
  test('fits while the workshop has it, or has none told', async () => {
    const book = await connectNotebook();
    expect(staleSupply(adapter, await keptPreferences(book))).toEqual([]);
    expect(staleSupply(adapter, await changePreferences(book, { workshop }))).toEqual([]);
    // volts of a supply with knobs are nobody's answer
    const bench = { ...workshop, 'supply.kind': 'bench', 'supply.volts': '7' };
    const kept = await changePreferences(book, { workshop: bench });
    expect(staleSupply({ ...adapter, ...bench, 'supply.volts': '3' }, kept)).toEqual([]);
  });
  test('no longer fits once the workshop has another', async () => {
    const book = await connectNotebook();
    for (const change of [{ 'supply.kind': 'battery' }, { 'supply.volts': '9' }, { 'supply.amps': 'yes' }]) {
      const found = staleSupply(
        adapter,
        await changePreferences(book, { workshop: { ...workshop, ...change } }),
      );
      expect(whys(found)).toEqual(['supply: supply-other']);
      expect(found.map(staleText).join('')).toMatch(/^Your workshop has another supply now, a \w/);
    }
  });
});

test('a rate that was taught since the earlier job is told beside the depth', () => {
  const job = jobOf(jobFileOf(pendantDraft));
  const taught = (jobs: number) =>
    planJob({ ...job, bench: { biteRate: { median: 0.9, spread: 0.1, jobs }, cell: null } });
  expect(staleRate(taught(1), taught(1))).toEqual([]);
  expect(whys(staleRate(taught(1), taught(2)))).toEqual(['depth: rate-changed']);
  const [since] = staleRate(planJob(job), taught(1));
  expect(whys(since ? [since] : [])).toEqual(['depth: rate-changed']);
  // the plan follows it: nothing has to be chosen anew
  expect(since && [isMisfit(since), staleMark(since)]).toEqual([false, 'Not as it was then']);
  expect(staleRate(null, taught(2))).toEqual([]);
});

test('everything that no longer fits of a job is told beside its line, with what to do', async () => {
  const book = await connectNotebook();
  await changePreferences(book, { workshop });
  const draft: Draft = {
    ...taken,
    'piece.thickness': '0.05',
    'piece.purpose': 'number',
    'supply.kind': 'bench',
  };
  const { plan, faults } = planDraft({ typed: jobFileOf(draft), filled: jobFileOf(filledDraft(draft)) });
  // deeper than its sheet: there is no plan at all, and still it is told why
  expect(plan).toBeNull();
  const found = await staleIn(book, draft, faults, nothing);
  expect(whys(found)).toEqual(['depth: fault', 'bath: bath-gone', 'supply: supply-other']);
  expect(staleText(found[0] as never)).toMatch(/^The depth: found .*, expected at most the thickness/);
  for (const one of found) {
    expect(staleText(one)).toMatch(/\.$/);
    expect([isMisfit(one), staleMark(one)]).toEqual([true, 'No longer fits']);
  }
});

test('a supply left unchosen is told beside the supply', async () => {
  const book = await connectNotebook();
  const draft = { ...pendantDraft, 'supply.kind': '' };
  const found = await staleIn(book, draft, unchosenIn(draft), nothing);
  expect(whys(found)).toEqual(['supply: fault']);
  expect(found.map(staleText)).toEqual(['Missing: the supply. Choose one.']);
});

test('every field has a line', () => {
  expect(
    (
      [
        'piece.depth',
        'piece.thickness',
        'piece.openArea',
        'cathode.gap',
        'tub.fill',
        'place.country',
      ] as const
    ).map(lineOf),
  ).toEqual(['depth', 'piece', 'depth', 'plate', 'plate', 'supply']);
});
