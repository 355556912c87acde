import type { UnitId } from '../units/convert.ts';
import type { Datum, Uncertainty } from './datum.ts';

const advised = <U extends UnitId>(
  value: number,
  unit: U,
  locator: string,
  uncertainty: Uncertainty = { kind: 'notStated' },
): Datum & { readonly unit: U } => ({
  value,
  unit,
  uncertainty,
  validFor: {},
  evidence: 'commonPractice',
  source: 'tradePractice',
  locator,
});

const recalled = <U extends UnitId>(
  value: number,
  unit: U,
  locator: string,
): Datum & { readonly unit: U } => ({
  value,
  unit,
  uncertainty: { kind: 'notStated' },
  validFor: {},
  evidence: 'fromMemory',
  source: 'memory',
  locator,
});

/** Amounts that texts recommend but no plan computes with. Texts take them from here. */
export const advice = {
  silverStrength: advised(60, 'g/L', 'sodium nitrate for silver'),
  silverStrengthLeast: advised(50, 'g/L', 'sodium nitrate for silver'),
  silverStrengthMost: advised(100, 'g/L', 'sodium nitrate for silver'),
  saltWaterStrength: advised(50, 'g/L', 'table salt for copper, brass, nickel silver and steel'),
  supplyVoltsLeast: advised(3, 'V', 'adapters for small devices'),
  smallSupplyLeast: advised(2, 'A', 'labels of small supplies'),
  smallSupplyMost: advised(5, 'A', 'labels of small supplies'),
  waterDrop: recalled(0.05, 'g', 'a drop off a pipette, twenty to the millilitre'),
  nail: advised(0.1, 'mm', 'a step that a fingernail catches at'),
  smallestPiece: advised(6, 'mm', 'the longer side; nothing smaller is etched with a design'),
  seal: advised(3, 'mm', 'left round what is laminated, so that no water creeps in'),
  /** how much to weigh to find the strength of a jar */
  sample: advised(100, 'mL', 'as much as a small measuring cylinder holds'),
  ammoniaPH: recalled(9, '1', 'from here a good part of the ammonia is gas; half of it at 9.2'),
  shieldFrom: recalled(5, '%', 'lye: skin corrosion, category 1A from here'),
  dampLeast: advised(5, '1', 'sludge that has settled, over its dry mass'),
  dampMost: advised(20, '1', 'sludge that has settled, over its dry mass'),
  tapChloride: advised(35, 'mg/L', 'of ordinary tap water'),
  roomSide: advised(3, 'm', 'a small room, as an example'),
  roomHeight: advised(2.4, 'm', 'a small room, as an example'),
} as const satisfies Record<string, Datum>;

/** Depths by purpose. They are starting values; the maker's own pieces give better ones. */
export const purposeDepths = {
  patina: advised(0.1, 'mm', 'to hold a patina'),
  feel: advised(0.15, 'mm', 'to feel by finger'),
  enamel: advised(0.3, 'mm', 'to hold enamel'),
  resin: advised(0.4, 'mm', 'to hold resin'),
  /** extra depth to bite, because polishing takes it off again */
  lightPolish: advised(0.02, 'mm', 'light polishing'),
  fullPolish: advised(0.05, 'mm', 'full polishing'),
} as const satisfies Record<string, Datum>;

/** Scales and vessels that makers own, and the error of each. */
export const tools = {
  fineScale: advised(0.1, 'g', 'jeweller’s or pocket scale'),
  scale: advised(1, 'g', 'letter scale'),
  kitchenScale: advised(5, 'g', 'kitchen scale'),
  cylinder: advised(1, '%', 'measuring cylinder or syringe'),
  jug: advised(5, '%', 'kitchen jug'),
} as const satisfies Record<string, Datum>;
