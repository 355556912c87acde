import type { Supply } from '../cell/setup.ts';
import { hasFineScale, hasIn, hasScale } from '../cell/setup.ts';
import { boxOf, mostHung } from '../cell/tub.ts';
import { practice } from '../facts/limits.ts';
import { resistFacts } from '../facts/resists.ts';
import { hasKnobs, offSignOf } from '../facts/supplies.ts';
import type { Params } from '../rules/rule.ts';
import type { Pairing } from './budget.ts';
import type { JobInput } from './job-input.ts';
import type { InstructionId } from './instruction-id.ts';
import type { Figures, Instruction, Settings } from './plan.ts';
import { weighingOf } from './weighing.ts';

/** Pieces that differ less than this, %, may hang where they are. */
const SWAP_BELOW = 90;

/**
 * The whole job as lines of work, in order. Screens, job sheet and bench card all take their lines from
 * here; the words room has the text of each id.
 */
export function instructionsFor(
  job: JobInput,
  pairing: Pairing,
  figures: Figures,
  settings: Settings | null,
  /** what the plan would set where the job has it otherwise */
  instead: Supply | null = null,
): Instruction[] {
  const { piece, cathode, bath, resist, tub, attached, hanger } = job;
  const { family, anion } = pairing;
  const lines: Instruction[] = [];
  const add = (step: Instruction['step'], id: InstructionId, params: Params = {}): void => {
    lines.push({ id, step, params });
  };

  add('metal', 'check-metal', { metal: piece.metal });
  add('metal', 'measure-piece', { thickness: { value: piece.thickness * 1e3, unit: 'mm' } });
  if (figures.depth) add('metal', piece.through ? 'depth-through' : 'depth-wanted', { depth: figures.depth });

  for (const thing of attached) if (thing !== 'seams') add('metal', `attached-${thing}`);

  add('electrodes', 'lay-plate', { plate: cathode.metal });
  const hung = mostHung(piece, tub);
  if (piece.count > hung) {
    add('electrodes', 'batch-hangs', {
      pieces: { value: hung, unit: '1' },
      lots: { value: Math.ceil(piece.count / hung), unit: '1' },
    });
  }
  if (tub.kind === 'jug') {
    add('electrodes', 'jug-as-cube', { side: { value: Math.round(boxOf(tub).fill * 1e3), unit: 'mm' } });
  }

  if (bath.record === null) {
    const weighing = weighingOf(job, figures);
    const kind = `water-${bath.water}` as const;
    add('electrolyte', 'tray');
    if (weighing?.kind === 'pour') {
      add('electrolyte', 'stock-water', { water: { value: weighing.waterMl, unit: 'mL' }, kind });
    } else {
      add('electrolyte', tub.kind === 'jug' ? 'pour-jug' : 'pour-water', {
        water: figures.water_volume ?? { value: 0, unit: 'mL' },
        kind,
      });
    }
    add('electrolyte', 'dress');
    // stuck on before the salt goes in: from then on nobody can see what is in the tub
    add('electrolyte', weighing?.kind === 'pour' ? 'label-both' : 'label-tub');
    if (weighing) {
      const whole = weighing.kind === 'pour' && !hasScale(job);
      add('electrolyte', whole ? 'whole-salt' : 'weigh-salt', {
        mass: { value: weighing.grams, unit: 'g' },
        salt: bath.salt,
      });
    }
    add('electrolyte', 'stir-salt');
    if (weighing?.kind === 'pour')
      add('electrolyte', 'stock-pour', { volume: { value: weighing.pourMl, unit: 'mL' } });
    add('electrolyte', 'let-stand', { hours: { value: practice.dissolveHours.value, unit: 'h' } });
  } else {
    add('electrolyte', 'dress');
    add('electrolyte', 'take-bath', { record: { text: bath.record } });
    add('electrolyte', 'top-up');
  }

  if (hasFineScale(job)) add('resist', 'weigh-piece');
  add('resist', 'degrease');
  add('resist', 'water-break');
  // the wire needs clean metal, and the mask covers it too
  if (hanger !== null) add('resist', `fix-${hanger}`);
  add('resist', `mask-${resist}`);
  add('resist', piece.faces === 'both' ? 'stop-out-edges' : 'stop-out-back');
  if (attached.includes('seams')) add('resist', 'attached-seams');
  if (figures.thinnest_line) add('resist', 'thinnest-line', { line: figures.thinnest_line });

  add('settings', hanger === null ? 'hang-piece' : `hang-${hanger}`);
  add('settings', 'plate-opposite', {
    plate: cathode.metal,
    gap: { value: cathode.gap * 1e3, unit: 'mm' },
  });
  if (job.supply.kind === 'adapter') add('settings', 'adapter-ends');
  if (hasIn(job, 'multimeter'))
    add('settings', hasKnobs(job.supply.kind) ? 'meter-clips-low' : 'meter-clips');
  add('settings', 'piece-on-plus');
  add('settings', 'plate-on-minus');
  if (settings?.control === 'amps') {
    add('settings', 'set-amps', {
      amps: { value: settings.amps, unit: 'A' },
      ceiling: { value: settings.ceiling, unit: 'V' },
      display: settings.display,
    });
    add('settings', 'stop-at-charge', { charge: settings.stopCharge, minutes: settings.minutes });
  } else if (settings) {
    add('settings', hasKnobs(job.supply.kind) ? 'set-volts' : 'has-volts', {
      volts: { value: settings.volts, unit: 'V' },
    });
    add('settings', 'stop-at-time', { minutes: settings.minutes });
  }
  if (instead?.control === 'amps')
    add('settings', 'would-set-amps', {
      amps: { value: instead.amps, unit: 'A' },
      ceiling: { value: instead.maxVolts, unit: 'V' },
    });
  else if (instead) add('settings', 'would-set-volts', { volts: { value: instead.volts, unit: 'V' } });
  const { pieces_at_once: atOnce, batch_evenness: evenness } = figures;
  if (atOnce && atOnce.value >= 1 && atOnce.value < piece.count)
    add('settings', 'batch-lots', {
      pieces: { value: atOnce.value, unit: '1' },
      lots: { value: Math.ceil(piece.count / atOnce.value), unit: '1' },
    });
  if (evenness && evenness.value < SWAP_BELOW) add('settings', 'batch-swap', { evenness });
  // each of its windows takes away amps that have to be seen
  if (job.supply.showsAmps) add('settings', 'test-strip');

  add('etch', 'power-check');
  add('etch', 'switch-on');
  if (settings) add('etch', 'first-look', { look: settings.firstLook });
  const off = offSignOf(job.supply.kind, job.supply.showsAmps);
  add('etch', `look-off-${off}`);
  add(
    'etch',
    !job.supply.showsAmps ? 'watch-bath' : hasIn(job, 'thermometer') ? 'watch-amps' : 'watch-amps-alone',
  );
  add('etch', 'deep-enough');

  add('neutralise', `supply-off-${off}`);
  add('neutralise', 'lift-to-first-rinse');
  add('neutralise', 'second-rinse');
  add('neutralise', anion === 'chloride' ? 'soda-wipe' : 'no-neutraliser');
  // what burns and gives off vapour is no step for a learner
  const isForAdult = job.place.use === 'teaching' && resistFacts[resist].remover !== null;
  add('neutralise', isForAdult ? 'adult-removes' : `remove-${resist}`);
  const measuredBy = [
    ...(hasFineScale(job) ? ['weigh' as const] : []),
    ...(hasIn(job, 'calliper') ? ['gauge' as const] : []),
  ];
  add('neutralise', measuredBy.length === 2 ? 'dry-and-measure' : `dry-and-${measuredBy[0] ?? 'look'}`);

  add('bath', 'settle-and-keep', { family: `group-${family}` });
  add('bath', job.supply.showsAmps ? 'update-label' : 'update-label-minutes');
  add('bath', 'hand-over', { family: `group-${family}` });

  add('sheet', 'write-down');
  return lines;
}
