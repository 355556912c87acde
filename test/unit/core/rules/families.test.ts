import { describe, expect, test } from 'vitest';
import { cellOffset } from '../../../../src/lib/core/cell/offset.ts';
import { recessedLimit } from '../../../../src/lib/core/cell/limiting-current.ts';
import { practice } from '../../../../src/lib/core/facts/limits.ts';
import {
  copperSulfateOffset,
  filmTransport,
  offsets,
} from '../../../../src/lib/core/facts/electrode-facts.ts';
import { metals } from '../../../../src/lib/core/facts/metals.ts';
import type { BitableMetal } from '../../../../src/lib/core/facts/metals.ts';
import { findBoughtSalt } from '../../../../src/lib/core/facts/salts.ts';
import type { BoughtSalt } from '../../../../src/lib/core/facts/salts.ts';
import { amount, cuff, figureOf, planOf, refusedBy, warnedBy } from '../../../fixtures/jobs.ts';

// what holds for copper holds for brass and bronze, and is not handed on to nickel silver or steel

const steel = { 'piece.metal': 'mild-steel', 'cathode.metal': 'stainless' };
const nickelSilver = { 'piece.metal': 'C75200', 'cathode.metal': 'stainless' };
const holding = (element: string) => ({ 'bath.dissolved': { [element]: amount(1, 'mg/L') } });

describe('a metal that the jar’s group does not shed is told', () => {
  const isTold = (patch: object): boolean => {
    const plan = planOf(cuff(), { ...patch });
    expect(refusedBy(plan)).toEqual([]);
    return warnedBy(plan).includes('other-metal-in-bath');
  };
  test('zinc in a bath for steel, which copper and brass may share', () => {
    expect(isTold({ ...steel, ...holding('Zn') })).toBe(true);
    expect(isTold(holding('Zn'))).toBe(false);
    expect(isTold({ 'piece.metal': 'C51000', ...holding('Zn') })).toBe(false);
  });
  test('iron in a bath for nickel silver, which sheds copper, nickel and zinc itself', () => {
    expect(isTold({ ...nickelSilver, ...holding('Fe') })).toBe(true);
    for (const own of ['Cu', 'Ni', 'Zn'])
      expect(isTold({ ...nickelSilver, ...holding(own) }), own).toBe(false);
  });
});

test('only a metal that sheds copper plates its own copper in copper sulfate', () => {
  const salt = findBoughtSalt('CuSO4.5H2O') as BoughtSalt;
  for (const [metal, { family }] of Object.entries(metals)) {
    const shedsCopper = ['copper', 'brass', 'bronze'].includes(family);
    expect(cellOffset(metal as BitableMetal, salt, 'C11000'), metal).toBe(
      shedsCopper ? copperSulfateOffset : offsets[family].sulfate,
    );
  }
});

test('the trade’s time in salt water is told of copper and brass, not of steel or nickel silver', () => {
  expect(figureOf(planOf(cuff()), 'practice_over_model').value).toBeGreaterThan(0);
  for (const other of [steel, nickelSilver])
    expect(planOf(cuff(), other).figures.practice_over_model).toBeUndefined();
});

test('steel and nickel silver are proposed the gentler volts', () => {
  for (const other of [steel, nickelSilver])
    expect(planOf(cuff(), other).settings).toMatchObject({ volts: practice.copperWorkVolts.value });
});

test('steel lets go of two electrons an atom in salt water, and so is its film reckoned', () => {
  const plan = planOf(cuff(), steel);
  const film = filmTransport.iron.chloride;
  if (!film) throw new Error('no film');
  const limit = recessedLimit(
    {
      diffusivity: film.diffusivity.value,
      viscosity: film.viscosity.value,
      expansion: film.expansion.value,
      excess: film.saturation.value,
      electrons: 2,
    },
    plan.job.piece.height,
    plan.job.piece.depth,
  );
  expect(figureOf(plan, 'limiting_current_density').value).toBeCloseTo(limit / 100, 9);
});
