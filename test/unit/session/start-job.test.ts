import 'fake-indexeddb/auto';
import { beforeAll, expect, test, vi } from 'vitest';
import type { JobRecord } from '../../../src/lib/notebook/records.ts';
import { blankDraft } from '../../../src/lib/session/draft.ts';
import { notebook, startJob } from '../../../src/lib/session/open.ts';
import { pendantDraft } from '../../fixtures/job-at.ts';

beforeAll(() => {
  vi.stubGlobal('navigator', { languages: ['en-GB'] });
});

const started = async (...from: Parameters<typeof startJob>): Promise<JobRecord['draft']> => {
  const record = await (await notebook()).job(await startJob(...from));
  if (record === null || 'raw' in record) throw new Error('no job');
  return record.draft;
};

test('jobs from one job’s answers are told apart, also on one day', async () => {
  const first = { ...pendantDraft, title: 'My piece' };
  const titles = [];
  for (let n = 0; n < 3; n += 1) titles.push((await started(first, 'first'))['title']);
  expect(titles[0]).toMatch(/^My piece, /);
  expect(new Set(titles).size).toBe(3);
  expect(titles[1]).toBe(`${titles[0] ?? ''} (2)`);
  // an example that is started twice, too
  expect((await started({ ...first, title: 'Fern' }))['title']).toBe('Fern');
  expect((await started({ ...first, title: 'Fern' }))['title']).toBe('Fern (2)');
});

test('a job from answers that tape a wire to a bitten back starts with a hanger that can hold it', async () => {
  const both = { ...pendantDraft, 'piece.faces': 'both', hanger: 'wire' };
  expect((await started(both))['hanger']).toBe('tab');
  expect((await started({ ...both, 'piece.faces': 'front' }))['hanger']).toBe('wire');
});

test('of a first job nothing is chosen that only its maker can know', async () => {
  expect(await started()).toMatchObject({ title: blankDraft.title, 'supply.kind': '', 'piece.metal': '' });
});
