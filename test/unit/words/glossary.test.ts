import { expect, test } from 'vitest';
import { tradeWords, whatAre } from '../../../src/lib/words/en/glossary.ts';

const screens = import.meta.glob<string>('../../../src/lib/ui/**/*.svelte', {
  query: '?raw',
  import: 'default',
  eager: true,
});

test('each word of the trade is explained on one screen, and shortly', () => {
  const shown = Object.values(screens).flatMap((source) =>
    [...source.matchAll(/<Explained words=\{\[([^\]]*)\]\}/g)].flatMap(([, list]) =>
      [...(list ?? '').matchAll(/'(\w+)'/g)].map(([, word]) => word),
    ),
  );
  expect(shown.toSorted()).toEqual(Object.keys(tradeWords).toSorted());
  for (const { word, means } of Object.values(tradeWords)) {
    expect(means.split(' ').length, word).toBeLessThanOrEqual(30);
    expect(means).toMatch(/^[A-Z].*\.$/);
  }
  expect(whatAre(['bite', 'resist'])).toBe('Words: bite, resist');
});
