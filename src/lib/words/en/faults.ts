import { jobFields, pathOfField } from '../../core/job/fields.ts';
import type { FieldId } from '../../core/job/fields.ts';
import type { Fault } from '../../core/plan/fault.ts';
import { symbolOf } from '../../core/units/convert.ts';
import { plain } from '../../core/units/format.ts';
import { fieldNames } from './fields.ts';
import { storedSymbol } from './units.ts';

/** What is asked where a solution is mixed. */
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

/** A field that can be at fault on a screen. */
export type FaultField = FieldId | keyof typeof mixNames;

const isMix = (field: FaultField): field is keyof typeof mixNames => Object.hasOwn(mixNames, field);

/** Answers that are picked from a list, not typed. */
const isChosen = (field: FieldId): boolean => jobFields[pathOfField(field)].kind === 'word';

/** Units as they are written for a reader: °C for degC. */
const withSymbols = (text: string): string =>
  text.replace(/(?<=\d )[A-Za-z][\w./]*/g, (unit) => (symbolOf(unit) === null ? unit : storedSymbol(unit)));

/** A fault as a maker reads it: what was found, what is expected. */
export function faultText({ path, found, expected }: Fault, field: FaultField): string {
  const typed = found.replace(/^"(.*)"$/, '$1');
  const isMissing = typed === 'nothing' || typed === '';
  if (isMissing && !isMix(field) && isChosen(field))
    return `Missing: the ${fieldNames[pathOfField(field)]}. Choose one.`;
  if (path === 'bath.salt') return 'A jar without a label makes no bath. Choose a salt that you can name.';
  // a job file takes the letters alone
  if (path === 'place.country')
    return `The country: found ${typed}, expected its name, or two letters such as NZ.`;
  const name = isMix(field) ? mixNames[field] : fieldNames[pathOfField(field)];
  // typed in per cent, read as a share of one
  if (!isMix(field) && jobFields[pathOfField(field)].kind === 'share' && Number.isFinite(Number(found)))
    return `The ${name}: found ${plain(100 * Number(found))} %, expected more than 0 and at most 100 %.`;
  return isMissing
    ? `Missing: the ${name}. Type a number.`
    : `The ${name}: found ${withSymbols(typed)}, expected ${withSymbols(expected)}.`;
}
