import type { Band } from '../core/field/depth-map.ts';
import { plain } from '../core/units/format.ts';
import { withUnit } from './units.ts';

export const biteMapTexts = {
  title: 'Where it bites deepest',
  solving: 'Solving the cell. A first look comes at once, the finer one takes some seconds.',
  finer: 'Finer grid',
  stop: 'Leave it at this look',
  stopped: 'Left at the first look.',
  unsolved:
    'Not solved: a jug has no walls to reckon with, and pieces that cannot hang side by side have no places. Give the tub’s inner sizes, or fewer pieces.',
  failed: 'Not solved:',
  drawing: 'The face that looks at the plate, stronger where it is bitten deeper',
  model: 'Model, not measured.',
  scattered: 'As if the open parts lay all over the face; your drawing decides where they lie.',
  depth: 'Depth',
  share: 'Share',
} as const;

const um = (value: number): string => plain(value, 3);

export function bandText({ from, to }: Band): string {
  if (from === null) return to === null ? 'alike' : `under ${withUnit(um(to), 'um')}`;
  return to === null ? `${withUnit(um(from), 'um')} and more` : `${um(from)} to ${withUnit(um(to), 'um')}`;
}

/** The number that stands in a band. */
export function bandNumber({ from, to }: Band): string {
  if (from === null) return to === null ? '' : `<${um(to)}`;
  return to === null ? `>${um(from)}` : um((from + to) / 2);
}

/** What the map says, in two sentences. */
export function biteMapSummary(bands: readonly Band[], mean: number, error: number | null): string {
  const [first, last] = [bands.at(0), bands.at(-1)];
  if (!first || !last) return '';
  const trust = error === null ? '' : ` The grid is off by ${withUnit(plain(100 * error, 1), '%')} or so.`;
  return `For ${withUnit(um(mean), 'um')} on average the shallowest places get ${bandText(first)}, the deepest ${bandText(last)}.${trust}`;
}
