import type { Reading } from './run.ts';

/** Volts and amps at one setting of the supply, compared with the plan's model. */
export interface CellPoint {
  /** V over the modelled resistance, bath and leads, at the amps that were read */
  readonly modelled: number;
  /** V that were read, less the table's offset */
  readonly over: number;
}

/** The plan's model of the cell. */
export interface ModelledCell {
  /** V */
  readonly offset: number;
  /** Ω, at the planned temperature */
  readonly bath: number;
  readonly leads: number;
  /** conductivity of the bath at a temperature, °C, over that at the planned one; null: the planned one */
  readonly gainAt: (celsius: number | null) => number;
}

/** Readings within this many volts belong to one setting, and count as one point. */
const KNOB = 0.5;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Volts and amps of a job, one point for each setting. */
export function knobPoints(
  readings: readonly Reading[],
  { offset, bath, leads, gainAt }: ModelledCell,
): readonly CellPoint[] {
  const settings = new Map<number, CellPoint[]>();
  for (const { volts, amps, celsius } of readings) {
    if (volts === null || amps === null || !(volts > 0 && amps > 0)) continue;
    const point = { modelled: amps * (bath / gainAt(celsius) + leads), over: volts - offset };
    const knob = Math.round(volts / KNOB);
    settings.set(knob, [...(settings.get(knob) ?? []), point]);
  }
  return [...settings.values()].map((some) => ({
    modelled: mean(some.map(({ modelled }) => modelled)),
    over: mean(some.map(({ over }) => over)),
  }));
}
