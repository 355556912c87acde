import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { chargeToDissolve, layerMass } from '../../src/lib/core/chemistry/faraday.ts';
import { operatingPoint } from '../../src/lib/core/cell/operating-point.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

check('serway', '"teapot", 12.0 V over 1.80 Ω, 0.133 mm of silver on 700 cm², 3.64 h (0.2 %)', () => {
  const supply = {
    kind: 'bench',
    control: 'volts',
    volts: si<'voltage'>(12),
    maxAmps: null,
    leads: null,
    showsAmps: true,
  } as const;
  const { current } = operatingPoint(
    supply,
    si<'voltage'>(0),
    si<'resistance'>(1.8),
    si<'voltage'>(Infinity),
  );
  const layer = layerMass(si<'length'>(1.33e-4), 10500, si<'area'>(700e-4));
  const seconds = chargeToDissolve(layer, equivalentWeight({ Ag: 100 }, { Ag: 1 })) / current;
  near(seconds / 3600, 3.64, 2e-3);
});
