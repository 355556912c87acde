import { hasFineScale, hasIn, hasScale } from '../cell/setup.ts';
import { resistFacts } from '../facts/resists.ts';
import type { Params } from '../rules/rule.ts';
import type { InstructionId } from './instruction-id.ts';
import type { Instruction, Plan } from './plan.ts';

/** Something to buy or lay out; the words room has its text. */
export interface LayOutLine {
  readonly id: LayOutId;
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
] as const;
export type LayOutId = (typeof layOutIds)[number];

const mm = (metres: number) => ({ value: Math.round(metres * 1e3), unit: 'mm' as const });
/** To the spoonful above: what is bought is never short by a rounding. */
const upTo = (value: number, step: number): number => Math.ceil(value / step - 1e-9) * step;

/**
 * Everything that the job needs on the table, with amounts, in the order it is used.
 * @returns nothing for a refused plan: what may not be done needs no shopping
 */
export function layOutOf(plan: Plan): readonly LayOutLine[] {
  const { job, figures, refusals } = plan;
  if (refusals.length > 0) return [];
  const { piece, cathode, bath, supply } = job;
  const lines: LayOutLine[] = [];
  const add = (id: LayOutId, params: Params = {}, isThere = false): void => {
    lines.push({ id, params, isThere });
  };
  add('sheet', {
    count: { value: piece.count, unit: '1' },
    metal: piece.metal,
    thickness: mm(piece.thickness),
  });
  add('plate', { plate: cathode.metal, width: mm(cathode.width), height: mm(cathode.height) });
  add('tray', {}, hasIn(job, 'tray'));
  if (bath.record === null) {
    add('tub');
    if (figures.water_volume)
      add('water', {
        water: { value: upTo(figures.water_volume.value, 50), unit: 'mL' },
        kind: `water-${bath.water}`,
      });
    if (figures.salt_mass)
      add('salt', { mass: { value: upTo(figures.salt_mass.value, 1), unit: 'g' }, salt: bath.salt });
    add('jar', {}, hasIn(job, 'jar'));
  } else {
    add('bath', { record: { text: bath.record } }, true);
  }
  add('resist', { resist: job.resist });
  const { remover } = resistFacts[job.resist];
  if (remover !== null) add('remover', { remover });
  add('leads', { wires: { value: piece.count + 1, unit: '1' } });
  add(supply.kind === 'battery' ? 'battery' : 'supply', {}, true);
  if (hasScale(job)) add(hasFineScale(job) ? 'fine-scale' : 'scale', {}, true);
  for (const tool of ['thermometer', 'multimeter', 'calliper'] as const)
    if (hasIn(job, tool)) add(tool, {}, true);
  for (const worn of ['goggles', 'gloves'] as const) add(worn, {}, hasIn(job, worn));
  add('apron');
  add('tongs');
  add('rinse-tubs');
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
