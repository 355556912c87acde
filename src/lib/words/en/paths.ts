import { readingUnitsOf } from '../../core/job/reading-units.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { jobFields } from '../../core/job/fields.ts';
import type { JobField } from '../../core/job/field-kinds.ts';
import type { JobPath } from '../../core/job/fields.ts';
import type { ElementSymbol } from '../../core/facts/elements.ts';
import type { InputPath } from '../../core/plan/input-paths.ts';
import type { FigureId } from '../../core/plan/outcome.ts';
import { fromSi } from '../../core/units/convert.ts';
import { si } from '../../core/units/quantity.ts';
import { choiceNames, fieldNames } from './fields.ts';
import { figureName, figureNames } from './figures.ts';
import { plain } from './locale.ts';
import { elementNames, supplyNames } from './materials.ts';
import { storedText } from './stored-text.ts';
import { amountText } from './units.ts';

/** The name of an input, and the job-file field whose kind of value it has. */
interface Named {
  readonly name: string;
  readonly like: JobPath;
}

const as = (like: JobPath): Named => ({ name: fieldNames[like], like });

/** Inputs that a plan stores differently from the job file. */
const inputs: Readonly<Record<Exclude<InputPath, JobPath | `bath.dissolved.${string}`>, Named>> = {
  'piece.faceArea': { name: 'area of the bitten faces', like: 'piece.openArea' },
  'piece.openAreaFrom': as('piece.area'),
  'piece.at.y': { name: 'place of the piece across the tub', like: 'piece.at' },
  'piece.at.z': { name: 'place of the piece up the tub', like: 'piece.at' },
  'piece.design.columns': { name: 'columns of the drawing', like: 'piece.count' },
  'piece.design.rows': { name: 'rows of the drawing', like: 'piece.count' },
  'piece.design.cells': as('piece.design'),
  'tub.water': as('tub.waterByJug'),
  attached: as('piece.attached'),
  resist: as('resist.kind'),
  workshop: as('workshop.has'),
  'place.mayTreat': as('place.authorityAllowsTreatment'),
};

const dissolved = /^bath\.dissolved\.(\w+)$/;

/** The name of an input; null for a stored path that this version does not know. */
function namedAt(path: string): Named | null {
  if (Object.hasOwn(inputs, path)) return inputs[path as keyof typeof inputs];
  if (Object.hasOwn(jobFields, path)) return as(path as JobPath);
  const element = dissolved.exec(path)?.[1];
  return element !== undefined && Object.hasOwn(elementNames, element)
    ? { name: `${elementNames[element as ElementSymbol]} in the bath`, like: 'bath.dissolved' }
    : null;
}

const wordOf = (word: string, like: JobPath): string =>
  like === 'supply.kind' ? storedText(supplyNames, word) : storedText(choiceNames, word);

const isThere = (text: string | null): text is string => text !== null && text !== 'null';

function valueText(text: string, like: JobPath, units: ReadingUnits): string {
  const field: JobField = jobFields[like];
  const value = JSON.parse(text) as unknown;
  if (typeof value === 'number') {
    const { unit } = field;
    return unit === undefined ? plain(value) : amountText(fromSi(si(value), unit), unit, units);
  }
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value))
    return value.length === 0 ? 'none' : value.map((one) => wordOf(String(one), like)).join(', ');
  return field.kind === 'text' ? String(value) : wordOf(String(value), like);
}

/**
 * "Gap: 30 mm before, 40 mm now." Values of inputs are JSON in SI, those of figures as they are shown.
 * @param job the job whose reading units hold
 */
export function changeText(
  change: { readonly path: string; readonly before: string | null; readonly after: string | null },
  job: { readonly units?: ReadingUnits } = {},
): string {
  const { path, before, after } = change;
  const said = (name: string, was: string, is: string): string =>
    `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${was} before, ${is} now.`;
  if (Object.hasOwn(figureNames, path))
    return said(
      figureName(path as FigureId, readingUnitsOf(job)),
      before ?? 'not there',
      after ?? 'not there',
    );
  const named = namedAt(path);
  if (named === null) return 'An answer that this version does not know has changed.';
  const field = jobFields[named.like];
  const text = (value: string | null, drawing: string): string => {
    if (!isThere(value)) return 'not there';
    return field.kind === 'json' ? drawing : valueText(value, named.like, readingUnitsOf(job));
  };
  return said(named.name, text(before, 'one'), text(after, 'another'));
}
