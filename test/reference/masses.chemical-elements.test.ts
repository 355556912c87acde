import { elementsObject } from 'chemical-elements';
import { MF } from 'mf-parser';
import { atomicWeights } from '../../src/lib/core/facts/elements.ts';
import type { ElementSymbol } from '../../src/lib/core/facts/elements.ts';
import { bathSalts } from '../../src/lib/core/facts/salts.ts';
import { check, near } from './check.ts';

// The package weighs isotopes by abundance, IUPAC's abridged table rounds. Molar masses: 1e-4, as our rows
// say of themselves. Weights: 2e-4, for molybdenum, whose two values differ by 1.02e-4.

/** Crystal water needs brackets: with a dot the parser gives a wrong mass and no error. */
const formulas = [
  ['NaNO3', 'NaNO3', bathSalts.NaNO3.molarMass.value],
  ['KNO3', 'KNO3', bathSalts.KNO3.molarMass.value],
  ['NaCl', 'NaCl', bathSalts.NaCl.molarMass.value],
  ['CuSO4', 'CuSO4', bathSalts.CuSO4.molarMass.value],
  ['CuSO4.5H2O', 'CuSO4(H2O)5', bathSalts.CuSO4.hydrates[0].molarMass.value],
  ['Na2SO4', 'Na2SO4', bathSalts.Na2SO4.molarMass.value],
  ['Na2SO4.10H2O', 'Na2SO4(H2O)10', bathSalts.Na2SO4.hydrates[0].molarMass.value],
] as const;

for (const [id, formula, ours] of formulas) {
  check('chemicalElements', `molar mass of ${id} (1e-4)`, () => {
    near(ours, new MF(formula).getInfo().mass, 1e-4);
  });
}

for (const symbol of Object.keys(atomicWeights) as ElementSymbol[]) {
  check('chemicalElements', `atomic weight of ${symbol} (2e-4)`, () => {
    const { mass } = elementsObject[symbol] as { mass: number };
    near(atomicWeights[symbol].value, mass, 2e-4);
  });
}
