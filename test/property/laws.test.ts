import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  coveredStrengths,
  coveredTemperatures,
  dissolve,
  solubility,
} from '../../src/lib/core/chemistry/solution.ts';
import { closedFormResistance } from '../../src/lib/core/cell/resistance.ts';
import { boughtSaltIds, findBoughtSalt } from '../../src/lib/core/facts/salts.ts';
import type { BoughtSalt } from '../../src/lib/core/facts/salts.ts';
import type { FigureId } from '../../src/lib/core/plan/outcome.ts';
import { CELSIUS_ZERO } from '../../src/lib/core/units/constants.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { cellOf } from '../fixtures/cells.ts';
import { amount, figureOf, pendant, planOf, tokens } from '../fixtures/jobs.ts';
import { chunk } from './runs.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const figure = (patch: Readonly<Record<string, unknown>>, id: FigureId) =>
  figureOf(planOf(tokens(), patch), id).value;
const close = (a: number, b: number) => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.abs(b));
};

describe('by amps', () => {
  test('twice the bare area takes twice the charge and half the amps a dm²', () => {
    fc.assert(
      fc.property(between(0.05, 0.5), (share) => {
        const [one, two] = [{ 'piece.openShare': share }, { 'piece.openShare': 2 * share }];
        close(figure(two, 'charge'), 2 * figure(one, 'charge'));
        close(figure(two, 'current_density'), figure(one, 'current_density') / 2);
      }),
      chunk(10),
    );
  });
  test('charge, time and metal go with the depth', () => {
    fc.assert(
      fc.property(between(0.01, 0.2), between(1.1, 4), (depth, times) => {
        const shallow = { 'piece.depth': amount(depth, 'mm') };
        const deep = { 'piece.depth': amount(depth * times, 'mm') };
        for (const id of ['charge', 'run_time', 'mass_removed', 'depth', 'undercut', 'hydrogen'] as const) {
          close(figure(deep, id), times * figure(shallow, id));
        }
      }),
      chunk(5),
    );
  });
  test('more amps take less time and the same charge', () => {
    fc.assert(
      fc.property(between(0.2, 1), between(1.1, 2), (amps, times) => {
        const [slow, fast] = [
          { 'supply.amps': amount(amps, 'A') },
          { 'supply.amps': amount(amps * times, 'A') },
        ];
        close(figure(fast, 'charge'), figure(slow, 'charge'));
        close(figure(slow, 'run_time'), times * figure(fast, 'run_time'));
      }),
      chunk(10),
    );
  });
});

test('by volts, more volts drive more amps in less time', () => {
  fc.assert(
    fc.property(between(2.5, 9), between(0.1, 0.5), (volts, more) => {
      const at = (v: number) =>
        planOf(pendant(), { 'supply.volts': amount(v, 'V'), 'supply.maxAmps': undefined });
      const [low, high] = [at(volts), at(volts + more)];
      expect(figureOf(high, 'current').value).toBeGreaterThan(figureOf(low, 'current').value);
      expect(figureOf(high, 'run_time').value).toBeLessThan(figureOf(low, 'run_time').value);
      close(figureOf(high, 'charge').value, figureOf(low, 'charge').value);
    }),
    chunk(10),
  );
});

/** A salt as bought, and two different points of what its tables cover, as shares of the way. */
const salts = boughtSaltIds.map((id) => [id, findBoughtSalt(id) as BoughtSalt] as const);
const kelvin = (celsius: number) => si<'temperature'>(celsius + CELSIUS_ZERO);

describe.each(salts)('%s', (_id, salt) => {
  const [coldest, warmest] = coveredTemperatures(salt);
  const strengthAt = (share: number, celsius: number) => {
    const [weakest, strongest] = coveredStrengths(salt, kelvin(celsius));
    const most = Math.min(strongest, solubility(salt, kelvin(celsius)));
    return si<'massConcentration'>(weakest * (most / weakest) ** (0.001 + 0.998 * share));
  };
  const kappa = (strength: number, celsius: number) =>
    dissolve(salt, si<'massConcentration'>(strength), kelvin(celsius)).conductivity;

  test('conducts better when hotter', () => {
    fc.assert(
      fc.property(between(0, 1), between(0, 0.9), between(0.02, 0.1), (share, from, step) => {
        const [cold, hot] = [from, from + step].map((t) => coldest + t * (warmest - coldest)) as [
          number,
          number,
        ];
        const strength = Math.min(strengthAt(share, cold), strengthAt(share, hot));
        expect(kappa(strength, hot)).toBeGreaterThan(kappa(strength, cold));
      }),
      chunk(200),
    );
  });
  test('conducts better when stronger, all below its maximum', () => {
    fc.assert(
      fc.property(between(0, 0.9), between(0.01, 0.1), between(0, 1), (share, step, t) => {
        const celsius = coldest + t * (warmest - coldest);
        const [weak, strong] = [strengthAt(share, celsius), strengthAt(share + step, celsius)];
        expect(kappa(strong, celsius)).toBeGreaterThan(kappa(weak, celsius));
      }),
      chunk(200),
    );
  });
  test('weighs more when stronger', () => {
    fc.assert(
      fc.property(between(0, 0.9), between(0.01, 0.1), between(0, 1), (share, step, t) => {
        const celsius = coldest + t * (warmest - coldest);
        const [weak, strong] = [share, share + step].map(
          (s) => dissolve(salt, strengthAt(s, celsius), kelvin(celsius)).density,
        ) as [number, number];
        expect(strong).toBeGreaterThan(weak);
      }),
      chunk(200),
    );
  });
});

describe('the bath resists', () => {
  const ohms = (width: number, plate: number, gap: number) => {
    const { setup, openArea } = cellOf({ window: [width, 20], plate: [plate, 20], gap });
    return closedFormResistance(setup, si<'area'>(openArea), si<'conductivity'>(10)).resistance;
  };
  const cells = [between(5, 40), between(5, 40), between(5, 60), between(1.05, 1.5)] as const;

  test('more over a wider gap', () => {
    fc.assert(
      fc.property(...cells, (width, plate, gap, times) => {
        expect(ohms(width, plate, gap * times)).toBeGreaterThan(ohms(width, plate, gap));
      }),
      chunk(500),
    );
  });
  test('less between a larger piece or plate', () => {
    fc.assert(
      fc.property(...cells, (width, plate, gap, times) => {
        expect(ohms(width * times, plate, gap)).toBeLessThan(ohms(width, plate, gap));
        expect(ohms(width, plate * times, gap)).toBeLessThan(ohms(width, plate, gap));
      }),
      chunk(500),
    );
  });
});
