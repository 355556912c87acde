import type { Fault } from '../../core/plan/fault.ts';
import { plain } from '../../core/units/format.ts';

/** What a field is called in a sentence. */
const fieldNames: Readonly<Record<string, string>> = {
  'piece.metal': 'The metal',
  'piece.width': 'The width',
  'piece.height': 'The height',
  'piece.diameter': 'The diameter',
  'piece.length': 'The length',
  'piece.thickness': 'The thickness',
  'piece.depth': 'The depth',
  'piece.openArea': 'The bare area',
  'piece.openShare': 'The bare share',
  'piece.count': 'The number of pieces',
  'cathode.width': 'The plate’s width',
  'cathode.height': 'The plate’s height',
  'cathode.gap': 'The gap',
  tub: 'The tub',
  'tub.length': 'The tub’s length',
  'tub.width': 'The tub’s width',
  'tub.diameter': 'The tub’s diameter',
  'tub.fill': 'The depth of liquid',
  'tub.waterByJug': 'The water by jug',
  'bath.strength': 'The strength',
  'bath.temperature': 'The bath temperature',
  'supply.volts': 'The volts',
  'supply.maxAmps': 'The supply’s amps',
  'place.room': 'The room',
  'place.country': 'The country',
  'mix.salt': 'The salt',
  'mix.water': 'The water',
  'mix.strength': 'The salt per litre',
  'mix.massPercent': 'The share by mass',
  'mix.molarity': 'The moles per litre',
  'mix.temperature': 'The temperature',
  'mix.volume': 'The liquid',
  'mix.left': 'What is left',
  'mix.wanted': 'The wanted strength',
  'mix.weight': 'The weight',
  'mix.measured': 'The measured volume',
};

/** A fault as a maker reads it: what was found, what is expected. */
export function faultText({ path, found, expected }: Fault, field: string): string {
  const name = fieldNames[field] ?? fieldNames[path.replace(/\.(value|unit)$/, '')] ?? path;
  if (path === 'bath.salt') return 'A jar without a label makes no bath. Choose a salt that you can name.';
  // typed in per cent, read as a share of one
  if (path === 'piece.openShare' && Number.isFinite(Number(found)))
    return `The bare share: found ${plain(100 * Number(found))} %, expected more than 0 and at most 100 %.`;
  const typed = found.replace(/^"(.*)"$/, '$1');
  return typed === 'nothing' || typed === ''
    ? `${name} is missing: type a number.`
    : `${name}: found ${typed}, expected ${expected}.`;
}
