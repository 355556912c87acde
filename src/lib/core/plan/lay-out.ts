import { hasFineScale, hasIn, hasScale } from '../cell/setup.ts';
import { resistFacts } from '../facts/resists.ts';
import type { Params } from '../rules/rule.ts';
import type { InstructionId } from './instruction-id.ts';
import type { Instruction, Plan } from './plan.ts';
import { weighingOf } from './weighing.ts';

/** Something to buy or lay out; the words room has its text. */
export interface LayOutLine {
  readonly id: LayOutId;
  /** how many of it, or for how many its amount is */
  readonly times: number;
  readonly params: Params;
  /** the workshop has it: to lay out, not to buy */
  readonly isThere: boolean;
}

export const layOutIds = [
  'sheet',
  'plate',
  'tub',
  'rinse-tubs',
  'tray',
  'salt',
  'water',
  'stock-jug',
  'bath',
  'jar',
  'resist',
  'remover',
  'leads',
  'supply',
  'battery',
  'scale',
  'fine-scale',
  'thermometer',
  'multimeter',
  'calliper',
  'goggles',
  'gloves',
  'apron',
  'tongs',
  'cleaning',
  'hanger',
] as const;
export type LayOutId = (typeof layOutIds)[number];

const mm = (metres: number) => ({ value: Math.round(metres * 1e3), unit: 'mm' as const });
/** No finer than a calliper reads: thin sheet is sold by hundredths of a millimetre. */
const calliper = (metres: number) => ({ value: Math.round(metres * 1e5) / 1e2, unit: 'mm' as const });
const SQUARE_CM = 1e4;
/** A jug of this many mL and more is counted in litres. */
const IN_LITRES = 5000;
/** To the spoonful above: what is bought is never short by a rounding. */
const upTo = (value: number, step: number): number => Math.ceil(value / step - 1e-9) * step;

const waterOf = (mL: number) =>
  mL < IN_LITRES
    ? ({ value: mL, unit: 'mL' } as const)
    : ({ value: Math.round(mL) / 1e3, unit: 'L' } as const);

/** Sides of the blank that a piece is cut from. */
function blankOf({ shape, width, height }: Plan['job']['piece']): readonly [width: number, height: number] {
  // a disc is planned as the square of its area
  const diameter = (2 * width) / Math.sqrt(Math.PI);
  return shape === 'disc' ? [diameter, diameter] : [width, height];
}

/**
 * Everything that the job needs on the table, with amounts, in the order it is used.
 * @param times how often the job is done side by side, each in a bath of its own
 * @returns nothing for a refused plan: what may not be done needs no shopping
 */
export function layOutOf(plan: Plan, times = 1): readonly LayOutLine[] {
  const { job, figures, refusals } = plan;
  if (refusals.length > 0) return [];
  const { piece, cathode, bath, supply } = job;
  const lines: LayOutLine[] = [];
  const add = (
    id: LayOutId,
    params: Params = {},
    { many = times, has = false }: { readonly many?: number; readonly has?: boolean } = {},
  ): void => {
    // what one maker has is not there for every station of a class
    lines.push({ id, times: many, params, isThere: has && times === 1 });
  };
  const pieces = times * piece.count;
  const [width, height] = blankOf(piece);
  add(
    'sheet',
    {
      count: { value: pieces, unit: '1' },
      metal: piece.metal,
      width: calliper(width),
      height: calliper(height),
      thickness: calliper(piece.thickness),
      area: { value: Math.ceil(pieces * width * height * SQUARE_CM - 1e-9), unit: 'cm2' },
    },
    { many: pieces },
  );
  add('plate', { plate: cathode.metal, width: mm(cathode.width), height: mm(cathode.height) });
  add('tray', {}, { has: hasIn(job, 'tray') });
  if (bath.record === null) {
    add('tub');
    const weighing = weighingOf(job, figures);
    if (weighing) {
      const isStock = weighing.kind === 'pour';
      const water = isStock ? weighing.waterMl : weighing.tubWaterMl;
      add('water', { water: waterOf(upTo(times * water, 50)), kind: `water-${bath.water}` });
      add('salt', { mass: { value: upTo(times * weighing.grams, 1), unit: 'g' }, salt: bath.salt });
      if (isStock) add('stock-jug');
    }
    add('jar', {}, { has: hasIn(job, 'jar') });
  } else {
    add('bath', { record: { text: bath.record } }, { has: true });
  }
  add('resist', { resist: job.resist }, { many: pieces });
  const { remover } = resistFacts[job.resist];
  if (remover !== null) add('remover', { remover }, { many: pieces });
  const wires = times * (piece.count + 1);
  add('leads', { wires: { value: wires, unit: '1' } }, { many: wires });
  add(supply.kind === 'battery' ? 'battery' : 'supply', {}, { has: true });
  if (hasScale(job)) add(hasFineScale(job) ? 'fine-scale' : 'scale', {}, { has: true });
  for (const tool of ['thermometer', 'multimeter', 'calliper'] as const)
    if (hasIn(job, tool)) add(tool, {}, { has: true });
  for (const worn of ['goggles', 'gloves'] as const) add(worn, {}, { has: hasIn(job, worn) });
  add('apron');
  add('tongs');
  add('cleaning');
  if (job.hanger !== null && job.hanger !== 'tab') add('hanger', {}, { many: pieces });
  add('rinse-tubs', {}, { many: 2 * times });
  return lines;
}

const set: ReadonlySet<InstructionId> = new Set<InstructionId>([
  'set-amps',
  'set-volts',
  'has-volts',
  'stop-at-charge',
  'stop-at-time',
  'batch-lots',
  'batch-swap',
]);

/** The lines of work that say what will be set, and when it ends. */
export const settingLinesOf = ({ instructions }: Plan): readonly Instruction[] =>
  instructions.filter(({ id }) => set.has(id));
