import type { UnitId } from '../units/convert.ts';
import type { Datum } from './datum.ts';

/** Our own estimates of how classes are run: we found no published figures. */
const held = (value: number, unit: UnitId, locator: string): Datum => ({
  value,
  unit,
  uncertainty: { kind: 'exact' },
  validFor: {},
  evidence: 'commonPractice',
  source: 'teachingPractice',
  locator,
});

/** What a class with several stations needs, and how long each part of it takes. */
export const classFacts = {
  pairsEach: held(2, '1', 'gloves tear, and come off for drawing: a second pair each; our reading'),
  spareGoggles: held(2, '1', 'for who looks in; our reading'),
  rinseEach: held(0.5, 'L', 'two small rinse tubs at each station, kept as waste; our reading'),
  welcome: held(15, 'min', 'rules, exits, goggles and gloves; our reading'),
  masking: held(35, 'min', 'drawing and masking; our reading'),
  startEach: held(3, 'min', 'looks before power and the start of one supply; our reading'),
  lookEach: held(2, 'min', 'one look-in, supply off; our reading'),
  rinsing: held(15, 'min', 'rinse, strip, dry and look; our reading'),
  clearing: held(10, 'min', 'baths closed and labelled, hands washed; our reading'),
} as const;
