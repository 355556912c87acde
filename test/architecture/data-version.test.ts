import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { dataVersion } from '$lib/core/facts/version.ts';

const changelog = readFileSync(new URL('../../src/lib/words/changelog.md', import.meta.url), 'utf8');

test('tables that move have a line in the changelog that says who is affected', () => {
  const section = changelog.split('### Data and rules').slice(1).join('\n');
  expect(section).toContain(`Data ${dataVersion}:`);
});
