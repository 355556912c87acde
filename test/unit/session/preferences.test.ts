import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { connectNotebook, PREFERENCES } from '../../../src/lib/notebook/store.ts';
import { blankDraft } from '../../../src/lib/session/draft.ts';
import { isPreference, keepPreferences, preferredAnswers } from '../../../src/lib/session/preferences.ts';

test('use, country, room and paper are asked once; nothing else is carried over', async () => {
  const book = await connectNotebook(() => undefined);
  expect(await preferredAnswers(book)).toEqual({});
  await keepPreferences(book, {
    ...blankDraft,
    'place.use': 'selling',
    'place.country': 'NZ',
    'place.room': '24',
    paper: 'Letter',
    'piece.metal': 'C11000',
  });
  expect(await preferredAnswers(book)).toEqual({
    'place.use': 'selling',
    'place.country': 'NZ',
    'place.room': '24',
    paper: 'Letter',
  });
  expect(isPreference('place.country')).toBe(true);
  expect(isPreference('piece.metal')).toBe(false);
});

test('what another version kept, and cannot be read, asks anew', async () => {
  const book = await connectNotebook(() => undefined);
  await book.saveMeta(PREFERENCES, { version: 99, use: 7 });
  expect(await preferredAnswers(book)).toEqual({});
});
