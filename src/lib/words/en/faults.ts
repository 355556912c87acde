import { jobFields, pathOfField } from '../../core/job/fields.ts';
import type { FieldId } from '../../core/job/fields.ts';
import type { Fault } from '../../core/plan/fault.ts';
import { symbolOf } from '../../core/units/convert.ts';
import { plain } from '../../core/units/format.ts';
import { fieldNames } from './fields.ts';
import { storedSymbol } from './units.ts';

/** Names of the quantities that the mixing page asks for. */
const mixNames = {
  'mix.salt': 'salt',
  'mix.water': 'water',
  'mix.strength': 'salt per litre',
  'mix.massPercent': 'share by mass',
  'mix.molarity': 'moles per litre',
  'mix.temperature': 'temperature',
  'mix.volume': 'liquid',
  'mix.left': 'liquid that is left',
  'mix.wanted': 'wanted strength',
  'mix.weight': 'weight',
  'mix.measured': 'measured volume',
} as const;

/** A field on a screen that can have a fault. */
export type FaultField = FieldId | keyof typeof mixNames;

const isMix = (field: FaultField): field is keyof typeof mixNames => Object.hasOwn(mixNames, field);

/** Whether the answer is picked from a list instead of typed. */
const isChosen = (field: FieldId): boolean => jobFields[pathOfField(field)].kind === 'word';

/** Replaces unit ids by their symbols: °C for degC. */
const withSymbols = (text: string): string =>
  text.replace(/(?<=\d )[A-Za-z][\w./]*/g, (unit) => (symbolOf(unit) === null ? unit : storedSymbol(unit)));

/** A fault in words: what was found, and what is expected. */
export function faultText({ path, found, expected }: Fault, field: FaultField): string {
  const typed = found.replace(/^"(.*)"$/, '$1');
  const isMissing = typed === 'nothing' || typed === '';
  if (isMissing && !isMix(field) && isChosen(field))
    return `Missing: the ${fieldNames[pathOfField(field)]}. Choose one.`;
  if (path === 'bath.salt') return 'A jar without a label makes no bath. Choose a salt that you can name.';
  // A name can be typed here, but a job file takes only the two letters.
  if (path === 'place.country')
    return `The country: found ${typed}, expected its name, or two letters such as NZ.`;
  const name = isMix(field) ? mixNames[field] : fieldNames[pathOfField(field)];
  // Shares are typed in per cent but read as a fraction of one, so they are converted back.
  if (!isMix(field) && jobFields[pathOfField(field)].kind === 'share' && Number.isFinite(Number(found)))
    return `The ${name}: found ${plain(100 * Number(found))} %, expected more than 0 and at most 100 %.`;
  return isMissing
    ? `Missing: the ${name}. Type a number.`
    : `The ${name}: found ${withSymbols(typed)}, expected ${withSymbols(expected)}.`;
}
