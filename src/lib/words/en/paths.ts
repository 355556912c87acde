import { defaultReadingUnits } from '../../core/job/reading-units.ts';
import type { FigureId } from '../../core/plan/outcome.ts';
import { fromSi } from '../../core/units/convert.ts';
import type { UnitSymbol } from '../../core/units/convert.ts';
import { plain } from '../../core/units/format.ts';
import { si } from '../../core/units/quantity.ts';
import { figureName, figureNames } from './figures.ts';
import { terms } from './terms.ts';
import { withUnit } from './units.ts';

/** What an input path is called when an answer has gone stale over it, and the unit that a maker reads it in. */
const names: Readonly<Record<string, readonly [name: string, unit?: UnitSymbol]>> = {
  'piece.metal': ['metal'],
  'piece.shape': ['shape'],
  'piece.width': ['width of the piece', 'mm'],
  'piece.height': ['height of the piece', 'mm'],
  'piece.thickness': ['thickness', 'mm'],
  'piece.openArea': ['bare area', 'cm2'],
  'piece.depth': ['depth', 'mm'],
  'piece.count': ['number of pieces'],
  'piece.faces': ['bare faces'],
  'piece.through': ['right through'],
  'cathode.metal': ['plate'],
  'cathode.gap': ['gap', 'mm'],
  'cathode.width': ['width of the plate', 'mm'],
  'cathode.height': ['height of the plate', 'mm'],
  'tub.kind': ['tub'],
  'tub.fill': ['depth of liquid', 'mm'],
  'tub.length': ['length of the tub', 'mm'],
  'tub.width': ['width of the tub', 'mm'],
  'tub.diameter': ['diameter of the tub', 'mm'],
  'tub.water': ['water', 'mL'],
  'bath.record': ['bath'],
  'bath.salt': ['salt'],
  'bath.strength': ['strength', 'g/L'],
  'bath.water': ['kind of water'],
  'bath.temperature': ['bath temperature', 'degC'],
  hanger: ['how it hangs'],
  attached: ['what is on it'],
  resist: ['resist'],
  'supply.volts': ['volts', 'V'],
  'supply.maxAmps': ['most amps', 'A'],
  'supply.kind': ['supply'],
  'place.use': ['use'],
  'place.country': ['country'],
  'place.room': ['room', 'm3'],
};

function valueText(text: string | null, unit: UnitSymbol | undefined): string {
  if (text === null || text === 'null') return 'not there';
  const value: unknown = /^["\d-]|^true$|^false$/.test(text) && unit === undefined ? JSON.parse(text) : text;
  if (unit !== undefined && Number.isFinite(Number(text)))
    return withUnit(plain(fromSi(si(Number(text)), unit)), unit);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return terms[String(value)] ?? String(value);
}

/** "Gap: 30 mm before, 40 mm now." Values of inputs are JSON in SI, those of figures as they are shown. */
export function changeText(change: {
  readonly path: string;
  readonly before: string | null;
  readonly after: string | null;
}): string {
  const { path, before, after } = change;
  const isFigure = Object.hasOwn(figureNames, path);
  const [name, unit] = names[path] ?? [isFigure ? figureName(path as FigureId, defaultReadingUnits) : path];
  const text = (value: string | null): string => (isFigure ? (value ?? 'not there') : valueText(value, unit));
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${text(before)} before, ${text(after)} now.`;
}
