import fc from 'fast-check';
import type { Arbitrary } from 'fast-check';
import { cathodeNames } from '../../src/lib/core/facts/electrode-facts.ts';
import { atomicWeights } from '../../src/lib/core/facts/elements.ts';
import { metalNames, metals, refusedMetals } from '../../src/lib/core/facts/metals.ts';
import { boughtSaltIds, refusedSalts } from '../../src/lib/core/facts/salts.ts';
import { resistKinds, resistNames } from '../../src/lib/core/facts/resists.ts';
import { supplyKinds } from '../../src/lib/core/facts/supplies.ts';
import { fromSi, unitsOf } from '../../src/lib/core/units/convert.ts';
import type { Dimension } from '../../src/lib/core/units/quantity.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import type { Raw } from '../fixtures/jobs.ts';

/** Jobs of every shape, from likely to absurd, all of them JSON. */

const pick = <T>(...values: readonly T[]): Arbitrary<T> => fc.constantFrom(...values);
const perhaps = <T>(one: Arbitrary<T>): Arbitrary<T | undefined> => fc.option(one, { nil: undefined });
const mostly = <T>(likely: Arbitrary<T>, odd: Arbitrary<T>): Arbitrary<T> =>
  fc.oneof({ weight: 6, arbitrary: likely }, { weight: 1, arbitrary: odd });

/** Evenly spread over powers of ten, the ends themselves now and then. */
const spread = (low: number, high: number): Arbitrary<number> =>
  fc.oneof(
    {
      weight: 12,
      arbitrary: fc
        .double({ min: Math.log(low), max: Math.log(high), noNaN: true })
        .map((x) => Math.min(high, Math.max(low, Math.exp(x)))),
    },
    { weight: 1, arbitrary: pick(low, high) },
  );

/** An SI value typed in any unit of its dimension that has a scale. */
const typed = (value: Arbitrary<number>, dimension: Dimension): Arbitrary<Raw> =>
  fc
    .tuple(value, pick(...unitsOf(dimension).filter((unit) => !unit.startsWith('gauge-'))))
    .map(([inSi, unit]) => ({ value: fromSi(si<Dimension>(inSi), unit), unit }));

const length = (lowMm: number, highMm: number) => typed(spread(lowMm / 1e3, highMm / 1e3), 'length');

const metal = mostly(
  pick(...Object.keys(metals), 'sterling', 'copper', 'brass', 'fine-silver'),
  pick(...Object.keys(metalNames), ...Object.keys(refusedMetals)),
);
const plate = mostly(
  pick('stainless', 'sterling', 'copper', 'brass', ...Object.keys(metals)),
  pick(...Object.keys(cathodeNames), ...Object.keys(refusedMetals)),
);
const salt = mostly(
  pick(...boughtSaltIds, 'NaNO3', 'KNO3', 'CuSO4·5H2O'),
  pick(...Object.keys(refusedSalts), 'NH4NO3', 'table-salt'),
);
const faces = pick('front', 'back', 'both');

/** Thickness by a gauge, or in any unit of length. */
const thickness = fc.oneof(
  { weight: 4, arbitrary: length(0.2, 3) },
  { weight: 1, arbitrary: length(0.05, 50) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.integer({ min: 0, max: 30 }), pick('gauge-BS', 'gauge-SWG'))
      .map(([value, unit]): Raw => ({ value, unit })),
  },
);

const outline = fc.oneof(
  fc.record({ shape: pick('rectangle'), width: length(5, 60), height: length(5, 50) }),
  fc.record({ shape: pick('disc'), diameter: length(5, 50) }),
  fc.record({ shape: pick('band'), length: length(10, 80), width: length(5, 40) }),
  fc.record({ shape: pick('rectangle'), width: length(1, 1000), height: length(1, 1000) }),
);

const bare: Arbitrary<Raw> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({ openShare: fc.double({ min: 1e-4, max: 1, noNaN: true }) }),
  },
  { weight: 3, arbitrary: fc.record({ openArea: typed(spread(1e-6, 2e-3), 'area') }) },
  { weight: 1, arbitrary: fc.constant({}) },
);

const piece: Arbitrary<Raw> = fc
  .tuple(
    outline,
    bare,
    fc.record({
      metal,
      thickness,
      faces,
      depth: mostly(length(0.01, 0.2), length(0.001, 50)),
      count: perhaps(mostly(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 100 }))),
      through: perhaps(fc.boolean()),
      at: perhaps(fc.record({ y: length(0.1, 200), z: length(0.1, 200) })),
    }),
  )
  .map(([shape, area, rest]) => ({ ...shape, ...area, ...rest }));

const tub: Arbitrary<Raw> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({ length: length(60, 400), width: length(60, 400), fill: length(40, 300) }),
  },
  { weight: 2, arbitrary: fc.record({ diameter: length(60, 400), fill: length(40, 300) }) },
  { weight: 2, arbitrary: fc.record({ waterByJug: typed(spread(1e-5, 1), 'volume') }) },
  {
    weight: 1,
    arbitrary: fc.record({ length: length(10, 1000), width: length(10, 1000), fill: length(5, 1000) }),
  },
);

const celsius = (low: number, high: number) =>
  typed(fc.double({ min: low + 273.15, max: high + 273.15, noNaN: true }), 'temperature');

const bath: Arbitrary<Raw> = fc.record({
  salt,
  strength: typed(mostly(spread(10, 180), spread(1e-3, 5000)), 'massConcentration'),
  water: perhaps(pick('deionised', 'distilled', 'rain', 'tap')),
  temperature: mostly(celsius(10, 40), celsius(-20, 100)),
  record: perhaps(fc.string({ maxLength: 80, unit: pick('a', 'b', 'X', 'Z', ' ', '0', '9', '-') })),
  dissolved: perhaps(
    fc.dictionary(pick(...Object.keys(atomicWeights)), typed(spread(1e-6, 500), 'massConcentration'), {
      maxKeys: 4,
    }),
  ),
  chargePassed: perhaps(typed(spread(1e-3, 1e6), 'charge')),
});

const volts = typed(mostly(spread(2.5, 9.99), spread(1e-3, 1000)), 'voltage');
const amps = typed(mostly(spread(0.05, 10), spread(0.001, 100)), 'current');
const supplyParts = {
  kind: mostly(pick('bench', 'adapter', 'battery'), pick(...Object.keys(supplyKinds))),
  showsAmps: perhaps(fc.boolean()),
  leads: perhaps(typed(spread(1e-4, 10), 'resistance')),
};
const supply: Arbitrary<Raw> = fc.oneof(
  fc.record({ ...supplyParts, control: pick('volts'), volts, maxAmps: perhaps(amps) }),
  fc.record({ ...supplyParts, control: pick('amps'), amps, maxVolts: volts }),
);

/** A job file, as JSON.parse would give it. */
export const arbitraryJob: Arbitrary<Raw> = fc
  .record({
    etchwright: pick(1),
    title: fc.string({ minLength: 1, maxLength: 40 }),
    piece,
    cathode: fc.record({
      metal: plate,
      width: length(5, 60),
      height: mostly(length(5, 60), length(1, 1000)),
      gap: mostly(length(5, 60), length(1, 1000)),
      sideways: perhaps(length(0.1, 100)),
      faces: perhaps(faces),
    }),
    tub,
    bath,
    resist: fc.record({ kind: pick(...resistKinds, ...Object.keys(resistNames)) }),
    supply,
    place: perhaps(
      fc.record({
        use: pick('home', 'selling', 'teaching'),
        room: perhaps(typed(spread(1, 100_000), 'volume')),
        country: perhaps(pick('NZ', 'US', 'DE', 'AQ')),
      }),
    ),
    paper: perhaps(pick('A4', 'Letter')),
  })
  .map((job) => JSON.parse(JSON.stringify(job)) as Raw);
