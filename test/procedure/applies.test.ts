import { describe, expect, test } from 'vitest';
import { metals } from '../../src/lib/core/facts/metals.ts';
import { resistFacts } from '../../src/lib/core/facts/resists.ts';
import { noBasis } from '../../src/lib/procedure/check-basis.ts';
import type { CheckBasis } from '../../src/lib/procedure/check-basis.ts';
import { checksOf } from '../../src/lib/procedure/checks.ts';
import type { HoldId } from '../../src/lib/procedure/checks.ts';
import { cuff, patched, pendant } from '../fixtures/jobs.ts';
import { checkBasisFor } from './steps.ts';

const asks = (basis: CheckBasis, hold: HoldId, id: string): boolean =>
  checksOf(hold, basis).some((check) => check.id === id);

describe('the crust that explodes is asked about', () => {
  test.each(Object.entries(metals))('for %s only where it is silver', (metal, { family }) => {
    const basis = checkBasisFor(patched(pendant(), { 'piece.metal': metal }));
    expect(asks(basis, 'storing', 'crust')).toBe(family === 'silver');
  });
  test('not for nickel silver by its everyday name, and for coin and low-tarnish silver', () => {
    const named = (metal: string): CheckBasis =>
      checkBasisFor(patched(cuff(), { 'piece.metal': metal, 'cathode.metal': 'stainless' }));
    expect(asks(named('nickel-silver'), 'storing', 'crust')).toBe(false);
    for (const metal of ['sterling', 'coin-silver', 'silver-935-lowtarnish'])
      expect(asks(named(metal), 'storing', 'crust'), metal).toBe(true);
  });
  test('while nobody knows the metal', () => {
    expect(asks(noBasis, 'storing', 'crust')).toBe(true);
    const unknown = { ...noBasis, inputs: { 'piece.metal': '"of another version"' } };
    expect(asks(unknown, 'storing', 'crust')).toBe(true);
    // a file may hold anything
    expect(asks({ ...noBasis, inputs: { 'piece.metal': '{"' } }, 'storing', 'crust')).toBe(true);
  });
});

describe('a flame near the remover is asked about', () => {
  test.each(Object.entries(resistFacts))(
    'for %s only where its remover catches fire',
    (kind, { remover }) => {
      const basis = checkBasisFor(patched(pendant(), { 'resist.kind': kind }));
      expect(asks(basis, 'lifting', 'flame-near')).toBe(remover !== null);
    },
  );
  test('while nobody knows the resist', () => {
    expect(asks(noBasis, 'lifting', 'flame-near')).toBe(true);
    expect(asks({ ...noBasis, inputs: { resist: '"varnish-of-old"' } }, 'lifting', 'flame-near')).toBe(true);
  });
});
