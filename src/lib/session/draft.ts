import { lengthUnits, temperatureUnits } from '../core/job/reading-units.ts';
import type { ReadingUnits } from '../core/job/reading-units.ts';

/**
 * What the maker has typed, field by field, as typed: nothing is lost when it does not parse. The draft
 * is always a whole job, since every field starts at a sensible value; a step is done when its fields
 * were seen and continued from.
 */
export const blankDraft = {
  title: 'My piece',
  'piece.metal': 'sterling-925',
  'piece.shape': 'rectangle',
  'piece.width': '',
  'piece.height': '',
  'piece.diameter': '',
  'piece.length': '',
  'piece.thickness': '',
  'piece.thickness.unit': 'mm',
  'piece.faces': 'front',
  'piece.purpose': 'patina',
  'piece.depth': '0.1',
  'piece.polish': '0',
  'piece.area': 'later',
  'piece.openArea': '',
  'piece.openShare': '',
  /** JSON of where the bare parts lie, from a drawing */
  'piece.design': '',
  'piece.count': '1',
  'piece.through': 'no',
  /** space-separated: seams oldsolder stones glue hinges plating */
  'piece.attached': '',
  hanger: 'wire',
  'cathode.metal': 'same',
  'cathode.size': 'same',
  'cathode.width': '',
  'cathode.height': '',
  'cathode.gap': '30',
  'tub.kind': 'box',
  'tub.length': '',
  'tub.width': '',
  'tub.diameter': '',
  'tub.fill': '',
  'tub.waterByJug': '',
  'bath.from': 'new',
  'bath.record': '',
  /** JSON of what a bath from the shelf holds already, mg/L by element */
  'bath.dissolved': '',
  /** A·h that it passed before this job */
  'bath.chargePassed': '',
  'bath.salt': 'NaNO3',
  'bath.strength': '60',
  'bath.water': 'deionised',
  'bath.temperature': '20',
  /** metal family that the recipe was proposed for; own once the maker has chosen */
  'bath.for': '',
  /** ms since 1970, when the salt went in; blank before */
  'bath.mixedAt': '',
  /** smallest step of the maker's scale, g; none when there is no fine scale */
  scale: '1',
  'resist.kind': 'nail-varnish',
  /** JSON of what a test strip told */
  strip: '',
  'supply.kind': 'bench',
  'supply.amps': 'yes',
  'supply.maxAmps': '3',
  'supply.volts': '7',
  'place.use': 'home',
  'place.country': '',
  'place.room': '20',
  'unit.length': 'mm',
  'unit.temperature': 'degC',
  paper: 'A4',
} as const;

export type FieldId = keyof typeof blankDraft;
export type Draft = Readonly<Record<FieldId, string>>;

/** How the maker reads lengths and temperatures; what this version does not know is read as the blank draft has it. */
export const readingUnitsIn = (draft: Draft): ReadingUnits => ({
  length: lengthUnits.find((unit) => unit === draft['unit.length']) ?? blankDraft['unit.length'],
  temperature:
    temperatureUnits.find((unit) => unit === draft['unit.temperature']) ?? blankDraft['unit.temperature'],
});

/** A draft from storage: unknown fields dropped, missing ones blank. */
export const draftFrom = (stored: Readonly<Record<string, string>>): Draft =>
  Object.fromEntries(
    Object.entries(blankDraft).map(([field, blank]) => [field, stored[field] ?? blank]),
  ) as unknown as Draft;
