import type { JobInput } from '../../core/plan/job-input.ts';
import { plain } from '../../core/units/format.ts';
import { fromSi } from '../../core/units/convert.ts';
import type { UnitSymbol } from '../../core/units/convert.ts';
import type { Dimension, Quantity } from '../../core/units/quantity.ts';
import { terms } from './terms.ts';
import { withUnit } from './units.ts';

export const fromSheetTexts = {
  title: 'Start from this sheet',
  start: 'Start from this',
  open: 'Open that job',
  here: (title: string): string => `It is in this notebook as “${title}”.`,
  carried: 'The sheet carried these settings. You fill in title, place and room.',
  held: 'The bath on the sheet held metal already. Choose yours from the shelf, or mix a new one.',
  checks: 'The new job starts at its metal. No check comes with it: look at everything yourself.',
} as const;

/** Why a code or a text leads nowhere, and what to do. */
export const sheetFaults = {
  mistyped: 'That is not a code from a sheet: a letter is wrong or missing. Check it again.',
  'not-here':
    'That job is not in this notebook. The QR code on its sheet carries the settings: scan it, or paste what it says. Its notebook file carries the whole job.',
  foreign: 'These are not Etchwright settings. Nothing was started.',
  newer: 'These settings come from a later version. Load the new version here, then try again.',
  damaged: 'These settings were damaged on the way: letters are missing or wrong. Scan or copy them again.',
  'no-job': 'No job can be planned from these settings. Nothing was started.',
} as const;

const shown = (value: Quantity<Dimension>, unit: UnitSymbol): string =>
  withUnit(plain(fromSi(value, unit)), unit);
const named = (id: string): string => terms[id] ?? id;

function sizeText({ shape, width, height }: JobInput['piece']): string {
  if (shape !== 'disc') return `${shown(width, 'mm')} × ${shown(height, 'mm')}`;
  return `disc ${withUnit(plain(Number((fromSi(width, 'mm') * Math.sqrt(4 / Math.PI)).toPrecision(6))), 'mm')}`;
}

/** Settings in short lines, to compare with the sheet in the hand. */
export function settingsLines({ piece, bath, resist, supply }: JobInput): readonly string[] {
  const size = `${sizeText(piece)}, ${shown(piece.thickness, 'mm')} thick`;
  const limit = supply.control === 'volts' ? supply.maxAmps : supply.amps;
  const volts = shown(supply.control === 'volts' ? supply.volts : supply.maxVolts, 'V');
  return [
    `${piece.count > 1 ? `${piece.count} × ` : ''}${named(piece.metal)}, ${size}`,
    `${shown(piece.depth, 'mm')} deep${piece.openArea === null ? '' : `, ${shown(piece.openArea, 'cm2')} bare`}`,
    `${named(bath.salt)}, ${shown(bath.strength, 'g/L')} of water, ${shown(bath.temperature, 'degC')}`,
    `${resist.replaceAll('-', ' ')}; supply ${volts}${limit === null ? '' : `, ${shown(limit, 'A')} at most`}`,
  ].map((line) => line.charAt(0).toUpperCase() + line.slice(1));
}
