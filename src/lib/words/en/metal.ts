import type { Piece } from '../../core/cell/setup.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { plain } from './locale.ts';
import { brownSharpe, imperialStandard } from '../../core/units/gauge.ts';
import { amountText, lengthText, storedSymbol } from './units.ts';

/** Texts of the screens that ask for the metal, the piece and its bare area. */
export const metalTexts = {
  titles: {
    which: 'What metal is the piece?',
    size: 'How big is it?',
    attached: 'Is anything on it?',
    depth: 'How deep should it bite?',
    area: 'How much of the face stays bare?',
  },
  unsure: { 'unknown-yellow': 'Yellow, not sure which', 'unknown-white': 'White, not sure which' },
  other: 'Another metal',
  findOut: 'Finding out what it is',
  whichOther: 'Which one?',
  shapes: [
    { value: 'rectangle', label: 'Rectangle' },
    { value: 'disc', label: 'Disc' },
    { value: 'band', label: 'Band' },
  ],
  tiny: 'That is smaller than any jewel. Are these centimetres?',
  isCm: 'Yes, centimetres',
  boxAround: 'Another outline: type the box around it.',
  pieces: (count: string): string => (count === '1' ? 'piece' : 'pieces'),
  /** @param area cm² */
  oneFace: (area: number, units: ReadingUnits): string => `One face: ${amountText(area, 'cm2', units, 3)}.`,
  frontOnly: 'Front only',
  bothFaces: 'Both',
  notThisWay: 'Not this way',
};

export const lengthUnits = [
  { value: 'mm', label: 'mm' },
  { value: 'cm', label: 'cm' },
  { value: 'in', label: 'inch' },
];

/** Unit for depths and sheet thickness, which nobody measures in centimetres. */
export const fineUnits = [
  { value: 'mm', label: 'mm' },
  { value: 'in', label: 'inch' },
];

export const thicknessUnits = [
  ...fineUnits,
  { value: 'gauge-BS', label: 'Brown & Sharpe' },
  { value: 'gauge-SWG', label: 'British SWG' },
];

const gaugeText = (gaugeOf: (gauge: number) => number, gauge: number, units: ReadingUnits): string => {
  try {
    return lengthText(gaugeOf(gauge), units, 2);
  } catch (error) {
    if (error instanceof RangeError) return 'no such gauge';
    throw error;
  }
};

/** One gauge number in both systems, since taking one system for the other is a common mistake. */
export const gaugeNote = (gauge: number, units: ReadingUnits): string =>
  `${String(gauge)} gauge: Brown & Sharpe ${gaugeText(brownSharpe, gauge, units)}, British SWG ${gaugeText(imperialStandard, gauge, units)}.`;

const cm2 = (value: number, units: ReadingUnits): string => amountText(value, 'cm2', units, 3);

/** How the bare area is known, and the same answer repeated the other way round. */
export const areaTexts = {
  later: { value: 'later', label: 'Later, when the mask is on' },
  /** @param unit in which the area is typed */
  ways: (unit: string) => [
    { value: 'share', label: 'As a share, by eye', hint: 'compare with the tiles' },
    { value: 'area', label: 'As an area', hint: `${storedSymbol(unit)}, counted on squared paper` },
  ],
  tiles: 'Bare share, by eye: white is bare metal',
  share: (percent: number): string => `${String(percent)} %`,
  whole: (faces: Piece['faces'], face: number, units: ReadingUnits): string =>
    `${faces === 'both' ? 'Both faces together' : 'The whole face'}: ${cm2(face, units)}.`,
  bareArea: (area: number, units: ReadingUnits): string => `Bare: ${cm2(area, units)}.`,
  bareShare: (percent: number): string => `Bare: ${plain(percent, 2)} % of it.`,
  tooMuch: (area: number, units: ReadingUnits): string => `${cm2(area, units)} is more than that.`,
};
