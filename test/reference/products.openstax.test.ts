import { expect } from 'vitest';
import { solubilityProducts } from './oracles/solubility-products.ts';
import { check } from './check.ts';

// as printed; where ours is another, the printed one stands beside it
const printed = {
  AgCl: 1.6e-10,
  AgBr: 5e-13,
  Ag2SO4: 1.2e-5,
  Ag2CO3: 8.1e-12,
  CuCl: 1.2e-6,
  'Cu(OH)2': 2.2e-20,
  PbSO4: 1.3e-8,
  PbCl2: 1.6e-5,
  'Ni(OH)2': 1.6e-16,
  'Pb(OH)2': 1.2e-15,
} as const;
for (const [id, value] of Object.entries(printed) as [keyof typeof printed, number][]) {
  check('openstaxProducts', `${id}: ${value} is kept, and inside the band`, () => {
    const { value: used, others, uncertainty } = solubilityProducts[id];
    expect([used, ...others.map((other) => other.value)]).toContain(value);
    const band = uncertainty as { low: number; high: number };
    expect(value).toBeGreaterThanOrEqual(band.low);
    expect(value).toBeLessThanOrEqual(band.high);
  });
}
