import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { chargeToDissolve, dissolvedMass, layerMass } from '../../src/lib/core/chemistry/faraday.ts';
import { molarVolume } from '../../src/lib/core/chemistry/gas.ts';
import { FARADAY } from '../../src/lib/core/units/constants.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

// Tolerances: half a unit of the last printed digit, or as said.

const charge = (amps: number, seconds: number) => si<'charge'>(amps * seconds);
const grams = (kilograms: number) => kilograms * 1e3;

check('openstax', 'example "Converting Current to Moles of Electrons", 10.23 A for 1 h, electrons', () => {
  near(charge(10.23, 3600) / FARADAY, 0.3817, 2e-4);
});
check('openstax', 'the same, 41.19 g of silver (printed with M = 107.9 and rounded moles: 0.1 %)', () => {
  near(grams(dissolvedMass(charge(10.23, 3600), equivalentWeight({ Ag: 100 }, { Ag: 1 }))), 41.19, 1e-3);
});
check('openstax', 'its Check Your Learning, aluminium from Al³⁺ at 25.0 A for 15.0 min, 2.10 g', () => {
  near(grams(dissolvedMass(charge(25, 900), equivalentWeight({ Al: 100 }, { Al: 3 }))), 2.1, 2.5e-3);
});
check('openstax', 'example "Time Required for Deposition", 0.010 mm chromium on 3.3 m², 11.0 h', () => {
  const layer = layerMass(si<'length'>(1e-5), 7190, si<'area'>(3.3));
  const hours = chargeToDissolve(layer, equivalentWeight({ Cr: 100 }, { Cr: 3 })) / 33.46 / 3600;
  near(hours, 11, 5e-3);
});

const zinc = equivalentWeight({ Zn: 100 }, { Zn: 2 });
const gate = layerMass(si<'length'>(1e-4), 7140, si<'area'>(3 * 5.5));

check('openstax', 'its Check Your Learning, zinc on 3.00 m × 5.50 m, 11.8 kg', () => {
  near(gate, 11.8, 4e-3);
});
check('openstax', 'the same at 25.5 A, 379 h', () => {
  near(chargeToDissolve(gate, zinc) / 25.5 / 3600, 379, 1.5e-3);
});

// molar masses per electron of products that are no sheet metal stand here
for (const [product, perElectron, printed] of [
  ['calcium', 40.078 / 2, 69.1],
  ['chlorine', 35.45, 122],
  ['lithium', 6.94, 23.9],
  ['hydrogen', 1.008, 3.48],
  ['aluminium', equivalentWeight({ Al: 100 }, { Al: 3 }), 31.0],
  ['chromium', equivalentWeight({ Cr: 100 }, { Cr: 3 }), 59.8],
] as const) {
  check(
    'openstax',
    `end of chapter, 3.33e5 C of ${product}, ${printed} g (the answer truncates: 0.4 %)`,
    () => {
      near(grams(dissolvedMass(si<'charge'>(3.33e5), perElectron)), printed, 4e-3);
    },
  );
}

check('openstax', 'end of chapter, area under 0.01123 mm of zinc after 1 h at 2.599 A, 395.4 cm²', () => {
  const mass = dissolvedMass(charge(2.599, 3600), zinc);
  near((mass / (7140 * 1.123e-5)) * 1e4, 395.4, 1e-3);
});

check(
  'openstax',
  'end of chapter, hydrogen of 2.345 A in 45 min, 0.79 L dry at 20 °C and 1 atm (1 %)',
  () => {
    const moles = charge(2.345, 45 * 60) / (2 * FARADAY);
    near(moles * molarVolume(293.15) * 1e3, 0.79, 1e-2);
  },
);
