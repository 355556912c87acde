import { expect, test } from 'vitest';
import { stripIn, stripRateFor } from '../../../src/lib/session/strip.ts';

const strip = {
  metal: 'sterling-925',
  salt: 'NaNO3',
  basis: { wanted: 100, rate: 0.95 },
  windows: [{ share: 0.5, minutes: 10, amps: 0.4, expected: 50 }],
  depths: [45, null, 90, null],
  rate: { id: 'strip', way: 'strip', rate: 0.8, off: 0.06 },
};
const text = JSON.stringify(strip);

test('a strip counts for the metal and salt it was bitten in, and for no other', () => {
  expect(stripRateFor(text, 'sterling-925', 'NaNO3')).toEqual(strip.rate);
  expect(stripRateFor(text, 'C11000', 'NaNO3')).toBeNull();
  expect(stripRateFor(text, 'sterling-925', 'KNO3')).toBeNull();
});
test('a rate that cannot be counts for nothing', () => {
  const odd = JSON.stringify({ ...strip, rate: { ...strip.rate, rate: 1e9 } });
  expect(stripRateFor(odd, 'sterling-925', 'NaNO3')).toBeNull();
});
test('what is no strip is none', () => {
  for (const other of ['', 'no json', '{}', '[1]', JSON.stringify({ ...strip, depths: 'deep' })])
    expect(stripIn(other)).toBeNull();
});
