import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bathNow, correctedUse, usesOf, withEvent } from '../../src/lib/notebook/bath-ledger.ts';
import type { BathRecord } from '../../src/lib/notebook/records.ts';
import { chunk } from './runs.ts';

/** What may happen to a bath, job by job. */
const act = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      kind: fc.constant('use' as const),
      charge: fc.double({ min: 0.01, max: 3, noNaN: true }),
      silver: fc.double({ min: 0, max: 9000, noNaN: true }),
      again: fc.boolean(),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constant('correct' as const),
      charge: fc.double({ min: 0.01, max: 3, noNaN: true }),
      pick: fc.nat(),
    }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('delete' as const), pick: fc.nat() }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('water' as const), waterMl: fc.nat(500) }) },
);

const blank: BathRecord = {
  version: 2,
  id: 'b',
  name: 'SILVER 1',
  salt: 'NaNO3',
  water: 'deionised',
  metalGroup: 'silver',
  events: [{ type: 'mixed', at: 0, strength: 60, waterMl: 1000, volumeMl: 1000, heldMg: { Ag: 50 } }],
};

test('a bath’s sums after 200 random jobs, corrections and deletions are those of a fresh recount', () => {
  fc.assert(
    fc.property(fc.array(act, { minLength: 200, maxLength: 200 }), (acts) => {
      let bath = blank;
      let volumeMl = 1000;
      /** the plain list: what each job is now taken to have put in */
      const book = new Map<string, { charge: number; silver: number }>();
      acts.forEach((one, n) => {
        const at = n + 1;
        const names = [...book.keys()];
        const picked = 'pick' in one && names.length > 0 ? names[one.pick % names.length] : undefined;
        const use = usesOf(bath).find(({ job }) => job === picked);
        if (one.kind === 'water') {
          volumeMl += one.waterMl;
          bath = withEvent(bath, { type: 'topped-up', at, waterMl: one.waterMl, saltG: 0 });
        } else if (one.kind === 'use') {
          const job = one.again && names.length > 0 ? (names.at(-1) as string) : `job ${n}`;
          book.set(job, { charge: one.charge, silver: one.silver });
          bath = withEvent(bath, { type: 'used', at, job, chargeAh: one.charge, tookMg: { Ag: one.silver } });
        } else if (picked !== undefined && use !== undefined) {
          const charge = one.kind === 'correct' ? one.charge : 0;
          const before = book.get(picked) ?? { charge: 1, silver: 0 };
          if (charge === 0) book.delete(picked);
          else book.set(picked, { charge, silver: (before.silver * charge) / before.charge });
          bath = withEvent(bath, correctedUse(use, charge, at));
        }
      });
      const now = bathNow(bath);
      const sum = (of: (one: { charge: number; silver: number }) => number): number =>
        [...book.values()].reduce((total, one) => total + of(one), 0);
      expect(now.volumeMl).toBe(volumeMl);
      expect(Math.abs(now.chargeAh - sum(({ charge }) => charge))).toBeLessThan(1e-3);
      const silver = 50 + sum(({ silver: mg }) => mg);
      // each correction keeps six digits
      expect(Math.abs((now.heldMg['Ag'] ?? 0) - silver)).toBeLessThan(1e-3 * silver);
      expect(new Set(now.jobs)).toEqual(new Set(book.keys()));
      expect(bath.events.length).toBeGreaterThanOrEqual(1 + book.size);
    }),
    chunk(60),
  );
});
