import { metalNames } from './materials.ts';
import { storedText } from './stored-text.ts';

/** Texts of the screens that ask for hanger, plate and tub. */
export const electrodeTexts = {
  titles: {
    hanger: 'How does current reach the piece?',
    plate: 'Which plate hangs opposite?',
    tub: 'What do they hang in?',
  },
  hangerKey: 'Dashed: the liquid. Hatched: under resist.',
  tubs: [
    { value: 'box', label: 'Box' },
    { value: 'round', label: 'Round' },
    { value: 'jug', label: 'By the jug' },
  ],
  fillTo: 'to the line you will fill to',
  fillOver: (height: string): string =>
    `to the line you will fill to; the piece is ${height} high and must be under`,
};

/** @param metal of the piece, as stored in the draft */
export const plateMetals = (metal: string) => [
  {
    value: 'same',
    label: `The piece’s own metal: ${storedText(metalNames, metal)}`,
    hint: 'Nothing foreign gets into the bath. Scrap will do; it gains metal.',
  },
  {
    value: 'stainless',
    label: 'Stainless steel',
    hint: 'With care: on minus only. On plus it gives off a poison.',
  },
  { value: 'C11000', label: 'Copper', hint: 'fits copper and brass' },
  { value: 'C26000', label: 'Brass 70/30', hint: 'fits copper and brass' },
];

/** @param same size of the plate in that case; null where it is not known */
export const plateSizes = (same: { readonly width: string; readonly height: string } | null) => [
  {
    value: 'same',
    label: 'As large as one piece',
    hint: same ? `${same.width} by ${same.height}, for an even bite` : 'for an even bite',
  },
  { value: 'own', label: 'Another size', hint: 'for several pieces, as wide as all of them' },
];
