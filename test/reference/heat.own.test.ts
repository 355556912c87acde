import { coolingOf, heatingRate, riseAfter } from '../../src/lib/core/chemistry/heat.ts';
import { tubCooling } from '../../src/lib/core/facts/limits.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

// 120 × 80 × 60 mm of water in a plastic tub on a table; last digit of each value
const bath = si<'mass'>(0.576);
const water = tubCooling.heatCapacity.value;
const cooling = coolingOf(
  tubCooling.side.value,
  tubCooling.bottom.value,
  0.12 * 0.08,
  si<'length'>(0.4),
  si<'length'>(0.06),
);

check('heatTable', 'tub of 120 × 80 × 60 mm loses 0.355 W/K', () => {
  near(cooling, 0.355, 2e-3);
});
check('heatTable', 'its time constant is 113 min', () => {
  near((bath * water) / cooling / 60, 113, 5e-3);
});

for (const [amps, volts, minutes, adiabatic, cooled, steady] of [
  [0.5, 5, 30, 1.87, 1.64, 7.0],
  [1, 5, 30, 3.73, 3.28, 14.1],
  [2, 6, 30, 8.96, 7.87, 33.8],
  [2, 10, 60, 29.9, 23.2, 56],
] as const) {
  const [v, i, t] = [si<'voltage'>(volts), si<'current'>(amps), si<'time'>(minutes * 60)];
  const row = `${amps} A, ${volts} V, ${minutes} min`;
  check('heatTable', `${row}: ${adiabatic} K without cooling (0.5 %)`, () => {
    near(riseAfter({ stored: bath * water, cooling: 0 }, 0, v * i, t), adiabatic, 5e-3);
    near(heatingRate(v, i, bath, water) * minutes * 60, adiabatic, 5e-3);
  });
  check('heatTable', `${row}: ${cooled} K with cooling (1 %)`, () => {
    near(riseAfter({ stored: bath * water, cooling }, 0, v * i, t), cooled, 1e-2);
  });
  check('heatTable', `${row}: ${steady} K in the end (1 %)`, () => {
    near(riseAfter({ stored: bath * water, cooling }, 0, v * i, si<'time'>(1e6)), steady, 1e-2);
  });
}

for (const [volts, amps, kilograms, perMinute] of [
  [5, 2, 0.5, 0.287],
  [6, 1, 0.5, 0.172],
  [10, 5, 1, 0.717],
  [10, 5, 0.25, 2.87],
] as const) {
  check('heatTable', `${volts} V, ${amps} A in ${kilograms} kg: ${perMinute} K/min (0.3 %)`, () => {
    const rate = heatingRate(si<'voltage'>(volts), si<'current'>(amps), si<'mass'>(kilograms), water);
    near(rate * 60, perMinute, 3e-3);
  });
}
