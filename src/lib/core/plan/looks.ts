import { limits, practice } from '../facts/limits.ts';
import type { Supply } from '../cell/setup.ts';
import type { Figure } from '../units/figure.ts';
import type { Pairing } from './budget.ts';
import type { JobInput } from './job-input.ts';
import type { WorkingInputs } from './working-inputs.ts';
import type { Figures, Settings } from './plan.ts';
import { tradeMinutes } from './trade-pace.ts';
import { workingOf } from './workings.ts';

/** Longest wait before the first look, min: with an ammeter, and without. */
const FIRST_LOOK = { counted: 5, byTime: 3 } as const;

/** Adds what rests on the finished ranges: the first look, and the trade's time beside the model's. */
export function withLooks(
  job: JobInput,
  pairing: Pairing,
  figures: Figures,
  workingInputs: WorkingInputs,
): Figures {
  const { run_time: time } = figures;
  if (!time) return figures;
  const cap = job.supply.showsAmps ? FIRST_LOOK.counted : FIRST_LOOK.byTime;
  const look = Math.min(cap, time.low / 3);
  const first_look: Figure = {
    value: look,
    low: look,
    high: look,
    unit: 'min',
    working: workingOf('first_look', workingInputs),
  };
  const trade = tradeMinutes(pairing);
  if (trade === null) return { ...figures, first_look };
  const scale = (job.piece.depth * 1e6) / practice.practiceDepth.value;
  const [short, long] = trade;
  const practice_over_model: Figure = {
    value: (Math.sqrt(short * long) * scale) / time.value,
    low: Math.min((short * scale) / time.high, (Math.sqrt(short * long) * scale) / time.value),
    high: (long * scale) / time.low,
    unit: '1',
    working: workingOf('practice_over_model', workingInputs),
  };
  return { ...figures, first_look, practice_over_model };
}

/** What is set, and when to look and stop: the figures' own, so that a quantity has one value. */
export function settingsFrom(supply: Supply, figures: Figures): Settings | null {
  const { run_time: minutes, charge: stopCharge, volts: display, first_look: firstLook } = figures;
  if (!minutes || !stopCharge || !display || !firstLook) return null;
  return supply.control === 'amps'
    ? {
        control: 'amps',
        amps: supply.amps,
        ceiling: Math.min(supply.maxVolts, limits.planVolts.value),
        display,
        minutes,
        stopCharge,
        firstLook,
      }
    : { control: 'volts', volts: Math.min(supply.volts, limits.planVolts.value), minutes, firstLook };
}
