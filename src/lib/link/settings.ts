import type { ElementSymbol } from '../core/facts/elements.ts';
import type { JobInput } from '../core/plan/job-input.ts';
import { fromSi } from '../core/units/convert.ts';
import type { UnitSymbol } from '../core/units/convert.ts';
import type { Dimension, Quantity } from '../core/units/quantity.ts';
import type { Attachment, Faces, Hanger, Piece, Supply, Tub, Water } from '../core/cell/setup.ts';
import type { ResistKind, SupplyKind } from '../core/facts/supplies.ts';
import { DIGITS } from './bits.ts';
import { fields, few, flag, number, perhaps, signed, word } from './codec.ts';
import type { Codec } from './codec.ts';
import {
  areaNumbers,
  attachmentNumbers,
  controlNumbers,
  elementNumbers,
  facesNumbers,
  hangerNumbers,
  metalNumbers,
  resistNumbers,
  saltNumbers,
  shapeNumbers,
  supplyNumbers,
  tubNumbers,
  waterNumbers,
} from './word-numbers.ts';

type Metal = keyof typeof metalNumbers;

/**
 * What a job is planned from, in bench units (mm, cm², g/L, °C, V, A, Ω, mL, A·h, mg/L). What is the
 * maker's own is not in it: no title, no place, no name of a bath, no paper.
 */
export interface Settings {
  readonly metal: Metal;
  readonly shape: Piece['shape'];
  /** width and height; a band's length and width; a disc's diameter */
  readonly sizes: readonly number[];
  readonly thickness: number;
  readonly faces: Faces;
  readonly areaFrom: Piece['openAreaFrom'];
  /** cm², or a share of one; null while it is to be measured */
  readonly area: number | null;
  readonly depth: number;
  readonly count: number;
  readonly through: boolean;
  readonly attached: readonly Attachment[];
  readonly hanger: Hanger | null;
  readonly at: { readonly y: number; readonly z: number } | null;
  readonly cathode: Metal;
  readonly cathodeWidth: number;
  readonly cathodeHeight: number;
  readonly gap: number;
  readonly sideways: number;
  readonly cathodeFaces: Faces;
  readonly tub: Tub['kind'];
  /** length, width, fill; diameter, fill; or water by the jug */
  readonly tubSizes: readonly number[];
  readonly salt: keyof typeof saltNumbers;
  readonly strength: number;
  readonly water: Water;
  readonly temperature: number;
  readonly dissolved: readonly { readonly element: ElementSymbol; readonly held: number }[];
  readonly chargePassed: number;
  readonly resist: ResistKind;
  readonly supply: SupplyKind;
  readonly control: Supply['control'];
  readonly volts: number;
  readonly amps: number | null;
  readonly showsAmps: boolean;
  readonly leads: number | null;
}

/** Version 1 of the layout. Another order or width is another version. */
export const layout: Codec<Settings> = fields<Settings>({
  metal: word(metalNumbers, 6),
  shape: word(shapeNumbers, 2),
  sizes: few(number),
  thickness: number,
  faces: word(facesNumbers, 2),
  areaFrom: word(areaNumbers, 2),
  area: perhaps(number),
  depth: number,
  count: number,
  through: flag,
  attached: few(word(attachmentNumbers, 4)),
  hanger: perhaps(word(hangerNumbers, 4)),
  at: perhaps(fields({ y: number, z: number })),
  cathode: word(metalNumbers, 6),
  cathodeWidth: number,
  cathodeHeight: number,
  gap: number,
  sideways: number,
  cathodeFaces: word(facesNumbers, 2),
  tub: word(tubNumbers, 2),
  tubSizes: few(number),
  salt: word(saltNumbers, 6),
  strength: number,
  water: word(waterNumbers, 3),
  temperature: signed,
  dissolved: few(fields({ element: word(elementNumbers, 5), held: number })),
  chargePassed: number,
  resist: word(resistNumbers, 5),
  supply: word(supplyNumbers, 5),
  control: word(controlNumbers, 2),
  volts: number,
  amps: perhaps(number),
  showsAmps: flag,
  leads: perhaps(number),
});

/** Rounded where typing stops, so that 20 °C is 20 and not 20.000000000000057. */
const rounded = (value: number): number => Number(value.toPrecision(DIGITS));
const as = (value: Quantity<Dimension>, unit: UnitSymbol): number => rounded(fromSi(value, unit));
const asOrNull = (value: Quantity<Dimension> | null, unit: UnitSymbol): number | null =>
  value === null ? null : as(value, unit);
const lengths = (...values: readonly Quantity<'length'>[]): readonly number[] =>
  values.map((value) => as(value, 'mm'));

function sizesOf({ shape, width, height }: Piece): readonly number[] {
  if (shape !== 'disc') return lengths(width, height);
  // the square that stands for a disc has its area
  return [rounded(fromSi(width, 'mm') * Math.sqrt(4 / Math.PI))];
}

function areaOf({ openArea, openAreaFrom, faceArea }: Piece): number | null {
  if (openArea === null || openAreaFrom === 'later') return null;
  return openAreaFrom === 'share' ? rounded(openArea / faceArea) : as(openArea, 'cm2');
}

const tubSizesOf = (tub: Tub): readonly number[] =>
  tub.kind === 'box'
    ? lengths(tub.length, tub.width, tub.fill)
    : tub.kind === 'round'
      ? lengths(tub.diameter, tub.fill)
      : [as(tub.water, 'mL')];

/** The settings of a job, its own things left out. */
export function settingsOf({
  piece,
  attached,
  hanger,
  cathode,
  tub,
  bath,
  resist,
  supply,
}: JobInput): Settings {
  return {
    metal: piece.metal,
    shape: piece.shape,
    sizes: sizesOf(piece),
    thickness: as(piece.thickness, 'mm'),
    faces: piece.faces,
    areaFrom: piece.openAreaFrom,
    area: areaOf(piece),
    depth: as(piece.depth, 'mm'),
    count: piece.count,
    through: piece.through,
    attached,
    hanger,
    at: piece.at && { y: as(piece.at.y, 'mm'), z: as(piece.at.z, 'mm') },
    cathode: cathode.metal,
    cathodeWidth: as(cathode.width, 'mm'),
    cathodeHeight: as(cathode.height, 'mm'),
    gap: as(cathode.gap, 'mm'),
    sideways: as(cathode.sideways, 'mm'),
    cathodeFaces: cathode.faces,
    tub: tub.kind,
    tubSizes: tubSizesOf(tub),
    salt: bath.salt as Settings['salt'],
    strength: as(bath.strength, 'g/L'),
    water: bath.water,
    temperature: as(bath.temperature, 'degC'),
    dissolved: Object.entries(bath.dissolved)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([element, held]) => ({ element: element as ElementSymbol, held: as(held, 'mg/L') })),
    chargePassed: as(bath.chargePassed, 'A.h'),
    resist,
    supply: supply.kind,
    control: supply.control,
    volts: as(supply.control === 'volts' ? supply.volts : supply.maxVolts, 'V'),
    amps: asOrNull(supply.control === 'volts' ? supply.maxAmps : supply.amps, 'A'),
    showsAmps: supply.showsAmps,
    leads: asOrNull(supply.leads, 'ohm'),
  };
}
