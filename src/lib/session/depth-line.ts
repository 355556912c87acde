import { converted } from '../core/units/convert.ts';
import { numberIn } from '../core/units/typed-number.ts';
import { amountText } from '$words/units.ts';

const readInInches = { length: 'in', temperature: 'degF' } as const;

/** The wanted depth of a stored draft as the list of jobs shows it, and as it is looked for: with a plain space. */
export function depthLine(draft: Readonly<Record<string, string>>): string {
  const { 'piece.depth': typed = '', 'piece.depth.unit': unit } = draft;
  const depth = numberIn(typed);
  if (unit !== 'in' || depth === null) return `${typed} mm`;
  return amountText(converted(depth, 'in', 'mm'), 'mm', readInInches).replace('\u00a0', ' ');
}
