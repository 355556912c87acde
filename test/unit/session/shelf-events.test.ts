import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { copiesIn } from '../../../src/lib/session/labels.ts';
import { bathNow, withEvent } from '../../../src/lib/notebook/bath-ledger.ts';
import { connectNotebook } from '../../../src/lib/notebook/store.ts';
import {
  addedIn,
  handedOverIn,
  happened,
  saltForWater,
  usedIn,
} from '../../../src/lib/session/shelf-events.ts';
import { bathEventText } from '../../../src/lib/words/en/shelf.ts';
import { aBath } from '../notebook/records-for-test.ts';

const at = Date.UTC(2026, 5, 1, 12);
const gone = (id: string, when: number, to = 'the collection') =>
  withEvent(aBath(id), { type: 'handed-over', at: when, to });

test('a year’s note lists what left in it, oldest first, with its metal', () => {
  const lines = handedOverIn(2026, [
    gone('late', at + 1),
    gone('early', at),
    gone('other year', Date.UTC(2025, 5, 1)),
    aBath('still here'),
    withEvent(gone('taken back', at), { type: 'kept', at: at + 2 }),
  ]);
  expect(lines.map((line) => line.at)).toEqual([at, at + 1]);
  expect(lines[0]).toMatchObject({ to: 'the collection', volumeMl: 1000, heldMg: { Ag: 120 } });
});

test('what a maker says is added to the bath as it stands now, and nothing is taken away', async () => {
  const book = await connectNotebook();
  await book.saveBath(aBath('b'));
  await happened('b', { type: 'moved', to: 'low shelf' }, at);
  const after = await happened('b', { type: 'topped-up', waterMl: 20, saltG: 0 }, at + 1);
  expect(after?.events).toHaveLength(aBath('b').events.length + 2);
  expect((await book.baths()).records).toEqual([after]);
  expect(bathNow(after ?? aBath('b'))).toMatchObject({ place: 'low shelf', volumeMl: 1020 });
  expect(await happened('no such', { type: 'kept' }, at)).toBeNull();
});

test('every kind of event has its line', () => {
  const bath = [
    ...aBath('b').events,
    { type: 'topped-up', at, waterMl: 20, saltG: 1 },
    { type: 'moved', at, to: 'shed' },
    { type: 'noted', at, text: 'clear' },
    { type: 'handed-over', at, to: '' },
    { type: 'kept', at },
  ];
  expect(bath.map((event) => bathEventText(event))).toEqual([
    'Mixed: 980 mL of water, 60 g/L',
    'Used: 0.4 A·h, Ag 120 mg',
    'Topped up: 20 mL of water, 1 g of salt',
    'Moved: shed',
    'Noted: clear',
    'Handed over',
    'Put back on the shelf',
  ]);
});

test('water spilled from 60 g/L took 60 g a litre with it', () => {
  expect(saltForWater(250, 60)).toBe(15);
});

test('amounts that no bath takes are none', () => {
  expect(['0', '100 000', '100 001', '-1', 'lots', ''].map(addedIn)).toEqual([
    0,
    100_000,
    null,
    null,
    null,
    null,
  ]);
  expect(['0,2', '1000', '1001', ''].map(usedIn)).toEqual([0.2, 1000, null, null]);
  expect(['0', '12', '13', '1.5', ''].map(copiesIn)).toEqual([0, 12, null, null, null]);
});
