import { describe, expect, test } from 'vitest';
import { figureUnits } from '../../../../src/lib/core/plan/outcome.ts';
import type { FigureId } from '../../../../src/lib/core/plan/outcome.ts';
import { planJob } from '../../../../src/lib/core/plan/plan-job.ts';
import { parseJob } from '../../../../src/lib/core/plan/job-input.ts';
import { amount, cuff, figureOf, jobOf, patched, pendant, planOf, tokens } from '../../../fixtures/jobs.ts';
import type { Raw } from '../../../fixtures/jobs.ts';

const examples: readonly (readonly [string, Raw])[] = [
  ['pendant', pendant()],
  ['cuff', cuff()],
  ['tokens', tokens()],
];

/** Every object inside, the plan itself too. */
function* insides(value: unknown): Generator<object> {
  if (typeof value !== 'object' || value === null) return;
  yield value;
  for (const inner of Object.values(value)) yield* insides(inner);
}

describe.each(examples)('the plan of the %s', (_name, raw) => {
  const plan = planOf(raw);
  test('is frozen through and through', () => {
    expect([...insides(plan)].filter((inside) => !Object.isFrozen(inside))).toEqual([]);
  });
  test('is the same every time', () => {
    expect(planOf(raw)).toEqual(plan);
    expect(JSON.stringify(planOf(raw))).toBe(JSON.stringify(plan));
  });
  test('does not touch the job', () => {
    const job = jobOf(raw);
    const before = structuredClone(job);
    planJob(job);
    expect(job).toEqual(before);
  });
  test('has figures with low ≤ value ≤ high, all finite, in their units', () => {
    for (const [id, { value, low, high, unit }] of Object.entries(plan.figures)) {
      expect([low, value, high].every(Number.isFinite), id).toBe(true);
      expect(low <= value && value <= high, id).toBe(true);
      expect(unit).toBe(figureUnits[id as FigureId]);
    }
  });
  test('explains every figure: formula, inputs and sources', () => {
    for (const [id, { working }] of Object.entries(plan.figures)) {
      expect(working.formula, id).not.toBe('');
      expect(working.inputs.length, id).toBeGreaterThan(0);
      expect(working.sources, id).toEqual(working.sources.toSorted());
    }
  });
  test('starts with the first look well before the end', () => {
    const { value } = figureOf(plan, 'first_look');
    expect(value).toBeLessThanOrEqual(5);
    expect(value).toBeLessThanOrEqual(figureOf(plan, 'run_time').low / 3 + 1e-12);
  });
  test('carries the version of its data', () => {
    expect(plan.dataVersion).toMatch(/^\d{4}-\d{2}-\d{2}\.[0-9a-f]{8}$/);
  });
  test('goes through its nine steps in order', () => {
    const steps = [...new Set(plan.instructions.map(({ step }) => step))];
    expect(steps).toEqual([
      'metal',
      'electrodes',
      'electrolyte',
      'resist',
      'settings',
      'etch',
      'neutralise',
      'bath',
      'sheet',
    ]);
  });
});

test('inches plan the same as millimetres, figure by figure', () => {
  const inches = (mm: number) => amount(mm / 25.4, 'in');
  const metric = planOf(pendant());
  const imperial = planOf(pendant(), {
    'piece.width': inches(30),
    'piece.height': inches(40),
    'piece.thickness': amount(1000 / 25.4, 'thou'),
    'piece.depth': amount(100 / 25.4, 'thou'),
    'piece.openArea': amount(4.2 / 6.4516, 'in2'),
    'cathode.width': inches(30),
    'cathode.height': inches(40),
    'cathode.gap': inches(30),
    'tub.length': inches(120),
    'tub.width': inches(80),
    'tub.fill': inches(60),
    'bath.temperature': amount(68, 'degF'),
    'bath.strength': amount(60_000, 'mg/L'),
    'supply.volts': amount(7000, 'mV'),
  });
  for (const id of Object.keys(metric.figures) as FigureId[]) {
    for (const part of ['value', 'low', 'high'] as const) {
      const [a, b] = [figureOf(metric, id)[part], figureOf(imperial, id)[part]];
      expect(Math.abs(a - b), `${id} ${part}`).toBeLessThanOrEqual(1e-9 * Math.abs(a));
    }
  }
});

describe('twice as many pieces', () => {
  const [one, two] = [planOf(tokens(), { 'piece.count': 5 }), planOf(tokens(), { 'piece.count': 10 })];
  const ratio = (id: FigureId) => figureOf(two, id).value / figureOf(one, id).value;
  test.each(['charge', 'mass_removed', 'hydrogen', 'run_time'] as const)('take twice the %s', (id) => {
    expect(ratio(id)).toBeCloseTo(2, 9);
  });
  test.each([
    'depth',
    'undercut',
    'thinnest_line',
    'equivalent_weight',
    'density',
    'conductivity',
    'solubility',
  ] as const)('have the same %s', (id) => {
    expect(ratio(id)).toBeCloseTo(1, 9);
  });
  test('spread the same amps over twice the metal', () => {
    expect(ratio('current_density')).toBeCloseTo(0.5, 9);
  });
});

describe('the depth', () => {
  test.each(examples)('of the %s is the wanted one', (_name, raw) => {
    const plan = planOf(raw);
    expect(figureOf(plan, 'depth').value).toBeCloseTo(plan.job.piece.depth * 1e6, 9);
  });
  test('has a wider range by the clock than by counted charge', () => {
    const spread = (plan: ReturnType<typeof planOf>) => {
      const { low, high } = figureOf(plan, 'depth');
      return high / low;
    };
    const counted = planOf(pendant());
    const byTheClock = planOf(pendant(), { 'supply.showsAmps': false });
    expect(spread(byTheClock)).toBeGreaterThan(1.5 * spread(counted));
  });
});

describe('metal in the bath', () => {
  test('counts what was there before', () => {
    const fresh = figureOf(planOf(cuff()), 'dissolved_metal.Cu');
    const used = figureOf(
      planOf(cuff(), { 'bath.dissolved': { Cu: amount(1000, 'mg/L') } }),
      'dissolved_metal.Cu',
    );
    expect(used.value - fresh.value).toBeCloseTo(1000, 6);
  });
  test('is all that came off, over the mixed bath', () => {
    const plan = planOf(cuff());
    const milligrams = figureOf(plan, 'mass_removed').value * 1e3;
    const litres = figureOf(plan, 'bath_volume').value / 1e3;
    expect(figureOf(plan, 'dissolved_metal.Cu').value).toBeCloseTo(milligrams / litres, 6);
  });
  test.each(['Ag', 'Cu', 'Zn', 'Ni', 'Fe', 'Pb', 'Sn'] as const)(
    'names %s that was there already',
    (element) => {
      const bench = element === 'Ag' ? pendant() : cuff();
      const plan = planOf(bench, { 'bath.dissolved': { [element]: amount(5, 'mg/L') } });
      expect(figureOf(plan, `dissolved_metal.${element}`).value).toBeGreaterThanOrEqual(5);
    },
  );
});

test('without its bare area a job has its bath figures and no others', () => {
  const parsed = parseJob(patched(pendant(), { 'piece.openArea': undefined }), { areaLater: true });
  if ('faults' in parsed) throw new Error('faults');
  const plan = planJob(parsed.job);
  expect(plan.refusals).toEqual([]);
  expect(Object.keys(plan.figures)).toContain('salt_mass');
  for (const id of ['current', 'volts', 'charge', 'run_time', 'depth'] as const) {
    expect(plan.figures[id]).toBeUndefined();
  }
  expect(plan.settings).toBeNull();
});
