import { standardPotential } from '../../src/lib/core/chemistry/displacement.ts';
import { potentials } from '../../src/lib/core/facts/potentials.ts';
import { otherPotentials } from './oracles/potentials.ts';
import { expect } from 'vitest';
import { check } from './check.ts';

// V, to the fifth of a tenth that databases differ by
const printed = {
  Au: 1.498,
  Ag: 0.7996,
  Cu: 0.337,
  Pb: -0.1262,
  Sn: -0.1375,
  Ni: -0.257,
  Fe: -0.447,
  Zn: -0.7618,
  Al: -1.662,
};
for (const [element, volts] of Object.entries(printed)) {
  check('openstaxPotentials', `${element}: ${volts} V (0.02 V)`, () => {
    expect(Math.abs((standardPotential[element as keyof typeof printed] ?? NaN) - volts)).toBeLessThanOrEqual(
      0.02,
    );
  });
}
check('openstaxPotentials', 'copper’s three potentials agree: (0.521 + 0.153)/2 = 0.337 V (5 mV)', () => {
  const one = otherPotentials['Cu+ + e- = Cu'].value;
  const two = otherPotentials['Cu++ + e- = Cu+'].value;
  expect(Math.abs((one + two) / 2 - potentials['Cu++ + 2e- = Cu'].value)).toBeLessThanOrEqual(0.005);
});
check(
  'openstaxPotentials',
  'silver chloride, 0.22233 V, from silver and its solubility product (3 mV)',
  () => {
    const nernst = 0.7996 + 0.059159 * Math.log10(1.77e-10);
    expect(Math.abs(otherPotentials['AgCl + e- = Ag + Cl-'].value - nernst)).toBeLessThanOrEqual(0.003);
  },
);
