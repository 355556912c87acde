import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { dissolvedMass, meanDepth } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

const YEAR = 365.25 * 86400;
const DAY = 86400;
const MIL = 25.4e-6;

/** m lost from 1 m² at 1 mA/cm² over a time. */
const lost = (perElectron: number, density: number, seconds: number) =>
  meanDepth(dissolvedMass(si<'charge'>(10 * seconds), perElectron), density, si<'area'>(1));

// a metal of one gram per mole of electrons and 1 g/cm³ shows the printed factors themselves
check('corrosionUnits', '1 mA/cm² is 3.28 M/(n·d) mm a year (0.4 %: last digit)', () => {
  near(lost(1, 1000, YEAR) * 1e3, 3.28, 4e-3);
});
check('corrosionUnits', '1 mA/cm² is 129 M/(n·d) mils a year (0.4 %)', () => {
  near(lost(1, 1000, YEAR) / MIL, 129, 4e-3);
});
check('corrosionUnits', '1 mA/cm² is 8.95 M/n g/m² a day (0.1 %)', () => {
  near(dissolvedMass(si<'charge'>(10 * DAY), 1) * 1e3, 8.95, 1e-3);
});

const iron = equivalentWeight({ Fe: 100 }, { Fe: 2 });
check('corrosionUnits', 'iron, n = 2, d = 7.88, 1 mA/cm²: 11.6 mm a year (0.2 %)', () => {
  near(lost(iron, 7880, YEAR) * 1e3, 11.6, 2e-3);
});
check('corrosionUnits', 'the same: 456 mils a year (0.2 %)', () => {
  near(lost(iron, 7880, YEAR) / MIL, 456, 2e-3);
});
check('corrosionUnits', 'the same: 249 g/m² a day (0.5 %)', () => {
  near(dissolvedMass(si<'charge'>(10 * DAY), iron) * 1e3, 249, 5e-3);
});
