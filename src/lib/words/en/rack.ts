import type { Rack } from '../../core/plan/plan.ts';
import { plain } from './locale.ts';
import { withUnit } from './units.ts';

export const rackTexts = {
  title: 'The batch in its tub',
  drawing: 'The pieces as they hang, seen from the plate',
  table: 'Current and bite at each place',
} as const;

export const rackColumns = [
  { id: 'place', label: 'Place', isHead: true },
  { id: 'current', label: 'Current', isNumber: true },
  { id: 'bite', label: 'Bite', isNumber: true },
] as const;

/** Currents below one amp are written in milliamps. */
export const placeAmps = (amps: number): string =>
  amps < 1 ? withUnit(plain(1e3 * amps, 3), 'mA') : withUnit(plain(amps, 3), 'A');

/** The bite at one place as a share of the mean, in whole per cent. */
export const placeBite = (relative: number): string => `${String(Math.round(100 * relative))} %`;

/** Summary of the drawing, in a sentence. */
export function rackSummary({ places }: Rack): string {
  const bites = places.map(({ relative }) => relative);
  const [least, most] = [Math.min(...bites), Math.max(...bites)];
  const numbers = (wanted: number): string =>
    places
      .flatMap(({ relative }, n) => (Math.abs(relative - wanted) < 0.005 ? [String(n + 1)] : []))
      .join(', ');
  if (most - least < 0.01) return `${String(places.length)} pieces, all bitten alike.`;
  return `${String(places.length)} pieces: deepest at ${numbers(most)} with ${placeBite(most)} of the mean, shallowest at ${numbers(least)} with ${placeBite(least)}.`;
}
