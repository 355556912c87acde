import type { Reading } from './run.ts';

/** Volts and amps that one setting of the knob came to, against what its plan had expected. */
export interface CellPoint {
  /** V that the modelled resistance, bath and leads, would take at the amps read */
  readonly modelled: number;
  /** V read, less the table's offset */
  readonly over: number;
}

/** What the plan modelled the cell with. */
export interface ModelledCell {
  /** V */
  readonly offset: number;
  /** Ω, at the planned temperature */
  readonly bath: number;
  readonly leads: number;
  /** how much better the bath conducts at a temperature, °C; null for the planned one */
  readonly gainAt: (celsius: number | null) => number;
}

/** Readings within half a volt were taken at one setting of the knob: they tell one thing. */
const KNOB = 0.5;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Volts and amps of a job, one point for each setting of its knob. */
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
