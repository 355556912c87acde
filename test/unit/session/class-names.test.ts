import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, expect, test, vi } from 'vitest';
import { mostNameLetters } from '../../../src/lib/core/job/typed-bounds.ts';
import { connectNotebook } from '../../../src/lib/notebook/store.ts';
import { keepNames, keptNames, namesFault, namesOf, numbered } from '../../../src/lib/session/class-names.ts';

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});

test('names are kept for each job apart, and are in no record that a file could take along', async () => {
  const book = await connectNotebook();
  expect(await keptNames(book, 'fern')).toEqual([]);
  await keepNames(book, 'fern', ['Ada\nB.', '']);
  expect(await keptNames(book, 'fern')).toEqual(['Ada\nB.', '']);
  expect(await keptNames(book, '')).toEqual([]);
  const texts = [];
  for (const of of ['jobs', 'baths'] as const) for await (const text of book.texts(of)) texts.push(text);
  expect(texts.join('')).not.toContain('Ada');
  expect(await book.meta('preferences')).toBeUndefined();
});

test('a line is a piece, a line left out is a blank', () => {
  expect(namesOf(' Ada \n\n3\r\n', 4)).toEqual(['Ada', '', '3', '']);
  expect(namesOf('', 2)).toEqual(['', '']);
  expect(numbered(2, 3)).toEqual(['1\n2\n3', '4\n5\n6']);
});

test('more lines than pieces, and a name that no card has room for, are faults', () => {
  expect(namesFault('a\nb\n\n', 2)).toBeNull();
  expect(namesFault('a\nb\nc', 2)).toBe('too-many');
  expect(namesFault('x'.repeat(mostNameLetters), 2)).toBeNull();
  expect(namesFault('x'.repeat(mostNameLetters + 1), 2)).toBe('too-long');
});
