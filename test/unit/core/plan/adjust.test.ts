import { describe, expect, it, test } from 'vitest';
import { adjusted } from '../../../../src/lib/core/plan/adjust.ts';
import { amount, pendant, planOf } from '../../../fixtures/jobs.ts';

const bite = { gotUm: 60, wantedUm: 100, minutes: 17, amps: 0.24 };

test('60 μm where 100 were wanted, in 17 min at 0.24 A: 28 min, or 0.4 A', () => {
  const next = adjusted(bite, planOf(pendant()));
  expect(next?.minutes).toBeCloseTo(28.3, 1);
  expect(next?.amps).toBeCloseTo(0.4, 3);
});

describe('amps are left out where they cannot be given', () => {
  it('by the supply', () => {
    const weak = {
      supply: {
        kind: 'adapter',
        control: 'volts',
        volts: amount(5, 'V'),
        maxAmps: amount(0.3, 'A'),
        showsAmps: true,
      },
    };
    expect(adjusted(bite, planOf(pendant(), weak))).toMatchObject({ amps: null });
  });
  it('by the film at the metal', () => {
    expect(adjusted({ ...bite, gotUm: 1 }, planOf(pendant()))).toMatchObject({ amps: null });
  });
});

it.each([
  ['no depth', { gotUm: 0 }],
  ['no time', { minutes: 0 }],
])('%s tells nothing', (_name, part) => {
  expect(adjusted({ ...bite, ...part }, planOf(pendant()))).toBeNull();
});
