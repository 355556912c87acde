import { fileFrom, isAsked, typedNumber, unitIn } from '../core/job/draft.ts';
import type { Draft } from '../core/job/draft.ts';
import type { JobField } from '../core/job/field-kinds.ts';
import { fieldIdOf, fieldRows, jobFields } from '../core/job/fields.ts';
import type { FieldId, JobPath } from '../core/job/fields.ts';
import type { Fault } from '../core/plan/fault.ts';
import { converted, fromSi, symbolOf, toSi } from '../core/units/convert.ts';
import { mayBeUnchosen } from '../link/layout.ts';
import type { Unchosen } from '../link/layout.ts';
import { countryTyped } from './country.ts';
import { blankDraft } from './draft.ts';
import { inDepthUnit } from './length-unit.ts';

export { typedNumber };

/** The depth of etching right through: the sheet's thickness, or half of it from each of both faces. */
function throughDepth(draft: Draft) {
  const unit = draft['piece.thickness.unit'];
  const value = typedNumber(draft['piece.thickness']);
  const whole = value === '' ? undefined : { value, unit };
  if (draft['piece.faces'] !== 'both' || typeof value !== 'number') return whole;
  try {
    const metres = toSi(value, unit, 'length');
    return { value: Number((fromSi(metres, 'mm') / 2).toPrecision(6)), unit: 'mm' };
  } catch (error) {
    // the gauge does not exist: return the thickness, so that its own fault is reported
    if (error instanceof RangeError) return whole;
    throw error;
  }
}

/** The depth plus what polishing will take off again. */
function depthWithPolish(draft: Draft): string {
  const [depth, polish] = [typedNumber(draft['piece.depth']), typedNumber(draft['piece.polish'])];
  return typeof depth === 'number' && typeof polish === 'number' && polish !== 0
    ? String(Number((depth + inDepthUnit(polish, draft['piece.depth.unit'])).toPrecision(6)))
    : draft['piece.depth'];
}

/** Attachments that make the piece a refused metal: they matter more than the metal of the sheet. */
const refusedFor: Readonly<Record<string, string>> = { oldsolder: 'cadmium-solder', plating: 'plated' };

/** The fields with the piece's width and height, which a plate of the same size copies. */
export const pieceSize = (draft: Draft): readonly [FieldId, FieldId] =>
  draft['piece.shape'] === 'disc'
    ? ['piece.diameter', 'piece.diameter']
    : draft['piece.shape'] === 'band'
      ? ['piece.length', 'piece.width']
      : ['piece.width', 'piece.height'];

/** Said of the scale by who has none. */
const NO_SCALE = 'none';

/** The draft with every short answer, such as "same", replaced by the values it stands for. */
function inFull(draft: Draft): Draft {
  const attached = draft['piece.attached'].split(' ');
  const refused = Object.keys(refusedFor).find((thing) => attached.includes(thing));
  const [width, height] =
    draft['cathode.size'] === 'same' ? pieceSize(draft) : (['cathode.width', 'cathode.height'] as const);
  return {
    ...draft,
    title: draft.title.trim() === '' ? blankDraft.title : draft.title,
    'piece.metal': (refused && refusedFor[refused]) ?? draft['piece.metal'],
    'piece.attached': attached.filter((thing) => !Object.hasOwn(refusedFor, thing)).join(' '),
    'piece.depth': depthWithPolish(draft),
    scale: draft.scale === NO_SCALE ? '' : draft.scale,
    'cathode.metal': draft['cathode.metal'] === 'same' ? draft['piece.metal'] : draft['cathode.metal'],
    'cathode.size': 'own',
    'cathode.width': draft[width],
    'cathode.height': draft[height],
    'place.country': countryTyped(draft['place.country']),
  };
}

const recipe: readonly JobPath[] = ['bath.salt', 'bath.strength', 'bath.water'];

/** Whether a text is the default of a new draft, or the same amount in another unit. */
function standsFor(draft: Draft, row: JobField, text: string, blank: string): boolean {
  const [own, typed] = [row.unit, symbolOf(unitIn(row, draft))];
  const value = typedNumber(text);
  if (own === undefined || typed === null || own === typed || typeof value !== 'number')
    return text === blank;
  return Number(converted(value, typed, own).toPrecision(3)) === Number(blank);
}

/** Fields that still have their default, or the recipe that was proposed. */
function nobodyTyped(draft: Draft): readonly JobPath[] {
  const isProposed = draft['bath.for'] !== '' && draft['bath.for'] !== 'own';
  return fieldRows.flatMap(([path, row]) => {
    const { schema, blank = '' } = row;
    const id = fieldIdOf(path);
    const isLeft = id !== null && blank !== '' && standsFor(draft, row, draft[id], blank);
    return schema && (isLeft || (isProposed && recipe.includes(path))) ? [path] : [];
  });
}

/** The job file of a draft, as the command line would read it. */
export function jobFileOf(draft: Draft): object {
  const full = inFull(draft);
  const { piece, ...rest } = fileFrom(full);
  const depth = draft['piece.purpose'] === 'through' ? { depth: throughDepth(draft) } : {};
  return { tub: {}, ...rest, piece: { ...(piece as object), ...depth }, untyped: nobodyTyped(full) };
}

/**
 * A fault while no supply is chosen. It is needed because a job file without a supply means a bench supply.
 */
export const unchosenIn = (draft: Draft): readonly Fault[] =>
  isBlank(draft, 'supply.kind') ? [{ path: 'supply.kind', found: 'nothing', expected: 'a supply' }] : [];

/** Fields that a job file has a usual value for, and this maker has chosen none of. */
export const leftOpen = (draft: Draft): readonly Unchosen[] =>
  mayBeUnchosen.filter((field) => isBlank(draft, field));

const isBlank = (draft: Draft, field: FieldId): boolean => draft[field].trim() === '';

/**
 * A draft with stand-ins for blank fields, so that an impossible pairing is refused at the first question. An
 * unknown tub becomes a jug, in which everything fits.
 */
export function filledDraft(draft: Draft): Draft {
  const filled: Record<FieldId, string> = { ...draft };
  if (isBlank(draft, 'piece.thickness')) filled['piece.thickness.unit'] = 'mm';
  if (draft['bath.salt'] === 'no-label') filled['bath.salt'] = blankDraft['bath.salt'];
  for (const field of ['piece.metal', 'bath.salt', 'supply.kind'] as const)
    if (isBlank(draft, field)) filled[field] = blankDraft[field];
  if (isBlank(draft, 'supply.volts')) filled['supply.volts'] = blankDraft['supply.volts'];
  for (const [path, row] of fieldRows) {
    const id = fieldIdOf(path);
    if (id === null || !isBlank(draft, id)) continue;
    if (row.standIn !== undefined) {
      const unit = symbolOf(unitIn(row, filled)) ?? 'mm';
      filled[id] = String(Number(fromSi(toSi(row.standIn, 'mm', 'length'), unit).toPrecision(4)));
    } else if (path.startsWith('tub.') && isAsked(row, draft)) {
      Object.assign(filled, { 'tub.kind': 'jug', 'tub.waterByJug': '500' });
    }
  }
  const area = draft['piece.area'] === 'area' ? 'piece.openArea' : 'piece.openShare';
  return isBlank(draft, area) ? { ...filled, 'piece.area': 'later' } : filled;
}

/** The field that a fault belongs to, so that it is shown where the maker typed. */
export function fieldOf({ path }: Fault, draft: Draft): FieldId | null {
  if (path === 'tub') return draft['tub.kind'] === 'jug' ? 'tub.waterByJug' : 'tub.fill';
  const known = path.replace(/\.(value|unit)$/, '');
  if (draft['cathode.size'] === 'same' && (known === 'cathode.width' || known === 'cathode.height'))
    return pieceSize(draft)[known === 'cathode.width' ? 0 : 1];
  if (Object.hasOwn(jobFields, known)) return fieldIdOf(known as JobPath);
  // the fault may be in a part of a field, such as one metal of those in the bath
  return known.includes('.')
    ? fieldOf({ path: known.replace(/\.[^.]*$/, ''), found: '', expected: '' }, draft)
    : null;
}
