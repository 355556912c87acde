import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { connectNotebook } from '../../../src/lib/notebook/store.ts';
import { changed } from '../../../src/lib/session/design-follows.ts';
import { blankDraft } from '../../../src/lib/session/draft.ts';
import type { Draft, FieldId } from '../../../src/lib/session/draft.ts';
import { keepPreferences, keptPreferences, preferredAnswers } from '../../../src/lib/session/preferences.ts';
import { answersOf, freeId, withSupply, withoutSupply } from '../../../src/lib/session/supplies.ts';
import { supplyName } from '../../../src/lib/words/en/supply.ts';

const bench: Draft = {
  ...blankDraft,
  'workshop.known': 'yes',
  'workshop.supply': '1',
  'supply.kind': 'bench',
  'supply.amps': 'yes',
  'supply.maxAmps': '5',
};
const adapter: Draft = {
  ...bench,
  'workshop.supply': '2',
  'supply.kind': 'adapter',
  'supply.amps': 'no',
  'supply.volts': '9',
  'supply.maxAmps': '2',
};
const both = withSupply(withSupply({}, bench), adapter);

/** As the screen does it: one answer after the other, each with what follows from it. */
const choose = (draft: Draft, id: string): Draft =>
  Object.entries(answersOf(both, id)).reduce(
    (one, [field, value]) => changed(one, field as FieldId, value),
    draft,
  );

test('a workshop keeps every supply, and each is chosen again as it was described', () => {
  expect(Object.keys(both)).toEqual(['1', '2']);
  expect(choose(adapter, '1')).toMatchObject({
    'workshop.supply': '1',
    'supply.kind': 'bench',
    'supply.amps': 'yes',
    'supply.maxAmps': '5',
  });
  expect(choose(choose(adapter, '1'), '2')).toMatchObject({
    'supply.kind': 'adapter',
    'supply.amps': 'no',
    'supply.volts': '9',
    'supply.maxAmps': '2',
  });
});

test('a new one has an id of its own and nothing of another; one without a kind is none', () => {
  expect(freeId({})).toBe('1');
  expect(freeId(both)).toBe('3');
  expect(choose(adapter, '3')).toMatchObject({ 'supply.kind': '', 'supply.volts': '', 'supply.maxAmps': '' });
  expect(Object.keys(withSupply(both, choose(adapter, '3')))).toEqual(['1', '2']);
  expect(Object.keys(withoutSupply(both, '1'))).toEqual(['2']);
});

test('the next job starts with the last one, and the other is still known', async () => {
  const book = await connectNotebook(() => undefined);
  await keepPreferences(book, bench);
  await keepPreferences(book, { ...adapter, 'workshop.has': 'multimeter tray' });
  expect(await preferredAnswers(book)).toMatchObject({
    'supply.kind': 'adapter',
    'workshop.has': 'multimeter tray',
  });
  expect((await keptPreferences(book))?.supplies).toEqual(both);
});

test('each is named by what it is, gives and shows', () => {
  const named = (id: string): string => supplyName(both[id] ?? {});
  expect(named('1')).toBe('Bench supply, up to 5\u00a0A, shows amps');
  expect(named('2')).toBe('Plug-in adapter, 9\u00a0V, up to 2\u00a0A');
});
