import type { Piece } from '../../core/cell/setup.ts';
import { fromSi } from '../../core/units/convert.ts';
import { plain } from '../../core/units/format.ts';
import { brownSharpe, imperialStandard } from '../../core/units/gauge.ts';
import { si } from '../../core/units/quantity.ts';
import { withUnit } from './units.ts';

/** The screens that ask for the metal, the piece and its bare area. */
export const metalTexts = {
  titles: {
    which: 'What metal is the piece?',
    size: 'How big is it?',
    attached: 'Is anything on it?',
    depth: 'How deep should it bite?',
    area: 'How much of the face stays bare?',
  },
  unsure: 'Yellow, not sure which',
  other: 'Another metal',
  findOut: 'Finding out what it is',
  whichOther: 'Which one?',
  shapes: [
    { value: 'rectangle', label: 'Rectangle' },
    { value: 'disc', label: 'Disc' },
    { value: 'band', label: 'Band' },
  ],
  boxAround: 'Another outline: type the box around it.',
  pieces: (count: string): string => (count === '1' ? 'piece' : 'pieces'),
  oneFace: (cm2: number): string => `One face: ${withUnit(plain(cm2, 3), 'cm2')}.`,
  frontOnly: 'Front only',
  bothFaces: 'Both',
  notThisWay: 'Not this way',
};

export const lengthUnits = [
  { value: 'mm', label: 'mm' },
  { value: 'in', label: 'inch' },
];

export const thicknessUnits = [
  ...lengthUnits,
  { value: 'gauge-BS', label: 'Brown & Sharpe' },
  { value: 'gauge-SWG', label: 'British SWG' },
];

const gaugeMm = (gaugeOf: (gauge: number) => number, gauge: number): string => {
  try {
    return withUnit(plain(fromSi(si<'length'>(gaugeOf(gauge)), 'mm'), 2), 'mm');
  } catch (error) {
    if (error instanceof RangeError) return 'no such gauge';
    throw error;
  }
};

/** One gauge number in both systems: taking one for the other is the usual slip. */
export const gaugeNote = (gauge: number): string =>
  `${String(gauge)} gauge: Brown & Sharpe ${gaugeMm(brownSharpe, gauge)}, British SWG ${gaugeMm(imperialStandard, gauge)}.`;

/** How the bare area is known. */
export const areaTexts = {
  later: { value: 'later', label: 'Later, when the mask is on' },
  ways: [
    { value: 'share', label: 'As a share, by eye', hint: 'compare with the tiles' },
    { value: 'area', label: 'As an area', hint: 'cm², counted on squared paper' },
  ],
  tiles: 'Bare share, by eye: white is bare metal',
  share: (percent: number): string => `${String(percent)} %`,
};

const cm2 = (value: number): string => withUnit(plain(value, 3), 'cm2');

/** What is bare of the bitten faces, said the other way round from how it was typed, so that a slip shows. */
export function bareText(
  { faces }: Pick<Piece, 'faces'>,
  whole: number,
  bare: { readonly cm2: number } | { readonly percent: number } | { readonly tooMuch: number } | null,
): string {
  const face = `${faces === 'both' ? 'Both faces together' : 'The whole face'}: ${cm2(whole)}.`;
  if (bare === null) return face;
  if ('cm2' in bare) return `${face} Bare: ${cm2(bare.cm2)}.`;
  return 'percent' in bare
    ? `${face} Bare: ${plain(bare.percent, 2)} % of it.`
    : `${face} ${cm2(bare.tooMuch)} is more than that.`;
}
