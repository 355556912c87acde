import 'fake-indexeddb/auto';
import { beforeAll, expect, test } from 'vitest';
import { bathNow, withEvent } from '../../../src/lib/notebook/bath-ledger.ts';
import { connectNotebook } from '../../../src/lib/notebook/store.ts';
import { answersFor, bathOfJob, bathsFor } from '../../../src/lib/session/shelf.ts';
import { electrolyteTexts } from '../../../src/lib/words/en/electrolyte.ts';
import { aBath } from '../notebook/records-for-test.ts';

const at = Date.UTC(2026, 5, 1, 12);
const used = (id: string, job: string, when: number) =>
  withEvent(aBath(id), { type: 'used', at: when, job, chargeAh: 0.4, tookMg: { Ag: 30 } });
const mine = used('mine', 'fern', at);

beforeAll(async () => {
  const book = await connectNotebook();
  await book.saveBath(mine);
  await book.saveBath(used('other', 'leaf', at + 1));
  await book.saveBath(withEvent(used('gone', 'moss', at), { type: 'handed-over', at, to: '' }));
});

test('a job that comes again takes the bath that it used, with what that holds now', async () => {
  expect(await bathOfJob('fern')).toEqual(answersFor({ bath: mine, now: bathNow(mine) }));
  expect(await bathOfJob('fern')).toMatchObject({ 'bath.from': 'shelf', 'bath.record': mine.name });
  // what was handed over, or never kept, is mixed anew
  expect(await bathOfJob('moss')).toMatchObject({ 'bath.from': 'new', 'bath.record': '' });
  expect(await bathOfJob('no such')).toMatchObject({ 'bath.from': 'new' });
});

test('a shelf that holds a bath for another metal is not told to be empty', async () => {
  const { suitable, others } = await bathsFor('C11000');
  expect([suitable.length, others]).toEqual([0, 2]);
  expect(electrolyteTexts.noneFits(others)).toBe(
    '2 baths on the shelf, none for this metal: one jar for each.',
  );
  expect(electrolyteTexts.noneFits(1)).toMatch(/^1 bath on the shelf, none for this metal/);
  expect(electrolyteTexts.noneFits(0)).toMatch(/^The shelf is empty so far/);
  const silver = await bathsFor('sterling-925');
  expect([silver.suitable.length, silver.others]).toEqual([2, 0]);
});
