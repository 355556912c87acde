import type { Datum } from './datum.ts';
import type { MetalFamily } from './metals.ts';
import { metalGroups } from './metal-groups.ts';
import type { Anion } from './salts/salt-facts.ts';

/*
 * Benches that cannot count amps take longer than clean metal in a clean bath would: taped wires, films, sludge,
 * a bath weaker than its label. Nobody has published by how much. The trade's own minutes are all there is, so a
 * bite by the clock is planned with them, and logged jobs of the maker's own replace them.
 */

interface Pace {
  /** minutes of the trade over those of the tables, at the trade's own set-up */
  readonly median: Datum;
  /** standard deviation of its logarithm towards the slow side; 1 bench in 20 is as fast as the tables */
  readonly slow: number;
}

const pace = (value: number, low: number, high: number, locator: string): Datum => ({
  value,
  unit: '1',
  uncertainty: { kind: 'band', low, high },
  validFor: {},
  evidence: 'commonPractice',
  source: 'tradePractice',
  locator,
});

/** 5 % of benches take two and a half times as long as the middle one: where 30 min are often needed, some need more. */
const SLOW = 0.55;

/** By what is bitten in what. */
export const practicePaces = {
  silverInNitrate: {
    median: pace(4.4, 1, 11, '15 min planned and 30 often needed at 7 V, over 4.8 min of the tables; 0.1 mm'),
    slow: SLOW,
  },
  copperInChloride: {
    median: pace(1.5, 1, 3.5, 'about 15 min in salt water at 5 V, over those of the tables; 0.1 mm'),
    slow: SLOW,
  },
  // between the two that the trade has minutes for; our own judgement
  others: {
    median: {
      ...pace(2.5, 1, 7, 'no minutes of the trade: the middle of those for silver and for copper'),
      source: 'budgetEstimate',
    },
    slow: 0.65,
  },
} as const satisfies Record<string, Pace>;

/** How much longer a bite by the clock takes than the tables say. */
export function practicePace(family: MetalFamily, anion: Anion): Pace {
  if (family === 'silver' && anion === 'nitrate') return practicePaces.silverInNitrate;
  return metalGroups[family] === 'copper and brass' && anion === 'chloride'
    ? practicePaces.copperInChloride
    : practicePaces.others;
}
