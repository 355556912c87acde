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
  oneFace: (area: number): string => `One face: ${withUnit(plain(area, 3), 'cm2')}.`,
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

const cm2 = (value: number): string => withUnit(plain(value, 3), 'cm2');

/** How the bare area is known, and the same said the other way round. */
export const areaTexts = {
  later: { value: 'later', label: 'Later, when the mask is on' },
  ways: [
    { value: 'share', label: 'As a share, by eye', hint: 'compare with the tiles' },
    { value: 'area', label: 'As an area', hint: 'cm², counted on squared paper' },
  ],
  tiles: 'Bare share, by eye: white is bare metal',
  share: (percent: number): string => `${String(percent)} %`,
  whole: (faces: Piece['faces'], face: number): string =>
    `${faces === 'both' ? 'Both faces together' : 'The whole face'}: ${cm2(face)}.`,
  bareArea: (area: number): string => `Bare: ${cm2(area)}.`,
  bareShare: (percent: number): string => `Bare: ${plain(percent, 2)} % of it.`,
  tooMuch: (area: number): string => `${cm2(area)} is more than that.`,
};
