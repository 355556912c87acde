import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { detailBounds, stencilCopies } from '../../core/job/typed-bounds.ts';
import { printedBar } from '../../core/units/printed.ts';
import { inward } from '../../core/units/typed.ts';
import type { BringInFault, PictureFault } from '../../core/mask/raster.ts';
import { count, plain } from './locale.ts';
import { amountText, readIn, withUnit } from './units.ts';

/** @param value mm */
const length = (value: number, units: ReadingUnits): string => amountText(value, 'mm', units, 2);

export const artTexts = {
  title: 'Measure it from a drawing or a photo',
  intro: 'PNG, JPEG, WebP or SVG. It stays on this device.',
  choose: 'Choose a picture',
  camera: 'Take a photo',
  pasteDrop: 'Or drop a picture here, or paste one.',
  samples: 'Or try one of these:',
  working: 'Working on it.',
  shows: 'The picture shows',
  wholePiece: 'the piece, edge to edge',
  askew: 'the piece and what is around it',
  askewHint: 'a photo: move four corners to those of the piece',
  corners: ['Upper left corner', 'Upper right corner', 'Lower right corner', 'Lower left corner'],
  cornersHint: 'Drag each corner to that of the piece. On a keyboard the arrows move it, with Shift by ten.',
  card: 'the piece beside a bank card',
  cardHint: 'both flat on the table: the card tells the size',
  cardCorners: [
    'Upper left corner of the card',
    'Upper right corner of the card',
    'Lower right corner of the card',
    'Lower left corner of the card',
  ],
  edges: ['Upper left corner of the piece', 'Upper right corner of the piece'],
  cardPointsHint:
    'Put four points where the sides of the card would meet, outside its round corners, and two on the upper corners of the piece. On a keyboard: arrows, with Shift by ten. Cover the number of the card.',
  outline: 'Outline of the piece',
  described: 'as described: rectangle, disc or band',
  traced: 'traced by hand',
  tracedHint: 'for any other shape: what is outside it does not count',
  tracedPointsHint:
    'Move the points to the rim of the piece, going round. On a keyboard: arrows, with Shift by ten.',
  pointMore: 'Add a point',
  pointFewer: 'Remove a point',
  cancel: 'Cancel',
  dark: 'Dark means',
  resist: 'resist',
  bare: 'bare metal',
  level: 'Where dark ends',
  levelHint: 'Higher: more counts as dark.',
  method: 'Light',
  whole: 'one level all over',
  local: 'uneven light evened out',
  least: 'Smallest detail to keep',
  clean: 'Fill pinholes and remove specks',
  dust: 'Pinholes and specks, one by one',
  view: 'Resist',
  drawn: 'as drawn',
  grown: 'widened by the undercut',
  grownHint: 'the bite brings it back to what is drawn',
  before: 'before the bite',
  after: 'after it',
  model: 'Model, not measured: resist that lifts loses more.',
  creepSource: 'Source for the creep',
  reserveSource: 'Source for the width that holds',
  use: 'Use this area',
  used: 'Used. The plan is worked out for this design.',
  picture: (when: string): string => `The design: resist dark, bare metal light, ${when}`,
  markLine: 'Thinnest line',
  markGap: 'Thinnest gap',
} as const;

/** Limits for the smallest detail, rounded so that a limit which is named can also be typed. */
export function leastFault(units: ReadingUnits): string {
  const most = readIn(detailBounds.most, 'mm', units);
  return `${plain(detailBounds.least)} to ${withUnit(inward(most.value, false), most.unit)}`;
}

export const tracedNames = (count: number): readonly string[] =>
  Array.from({ length: count }, (_, n) => `Point ${String(n + 1)} of the outline`);

/** The width of the piece by the card, compared with the typed width, mm. */
export const acrossText = (across: number, width: number, units: ReadingUnits): string =>
  `By the card the piece is ${length(across, units)} wide; you said ${length(width, units)}.`;

/** One small detail, with its number on the picture. */
export function dustText(
  { kind, x, y, width }: { kind: 'pinhole' | 'speck'; x: number; y: number; width: number },
  number: number,
  units: ReadingUnits,
): string {
  const does = kind === 'pinhole' ? 'Fill pinhole' : 'Remove speck';
  const [left, top] = [x, y].map((one) => {
    const { value, finest } = readIn(one, 'mm', units);
    return plain(value, 2, finest);
  }) as [string, string];
  const place = `${left} from the left, ${top} from the top`;
  return `${does} ${String(number)}: ${length(width, units)} wide, ${place}`;
}

export const dustLeft = ({
  pinholes,
  specks,
  dust,
}: {
  pinholes: number;
  specks: number;
  dust: readonly unknown[];
}): string => `And ${String(pinholes + specks - dust.length)} smaller ones.`;

export const sampleNames = {
  'seed-head': 'Seed head',
  'tide-lines': 'Tide lines',
  'fern-leaf': 'Fern leaf',
} as const;

export const stencilPanelTexts = {
  title: 'Print it as a stencil',
  size: 'Lines',
  grown: 'widened by the undercut',
  grownHint: 'the bite brings them back to what is drawn',
  drawn: 'as drawn',
  film: 'Which way round',
  mirrored: 'mirrored',
  mirroredHint: 'for iron-on film and paper: it goes face down',
  straight: 'as it looks',
  dark: 'Print dark',
  positive: 'the resist',
  negative: 'the bare metal',
  negativeHint: 'for film that light hardens',
  paper: 'Paper',
  copies: 'Copies on the page',
  copiesFault: `a whole number from ${plain(stencilCopies.least)} to ${plain(stencilCopies.most)}`,
  tooLarge: 'The piece is larger than this paper: not one whole copy fits.',
  bar: 'The bar of the last print measures',
  barHint: 'The next print corrects for a printer that shrinks or stretches.',
  barFault: `${plain(printedBar.least)} to ${withUnit(plain(printedBar.most), 'mm')}; beyond that the print was not made at 100 %`,
} as const;

type Fault = PictureFault | BringInFault;

const faults: Readonly<Record<Exclude<Fault['id'], 'tooLarge'>, string>> = {
  notAPicture: 'This file is not a PNG, JPEG, WebP or SVG, or it is cut off. Choose another.',
  bomb: 'This drawing is too large, or defines parts that grow when it is read. Save it as a plain SVG and choose it again.',
  broken: 'The picture is damaged: it could not be opened. Save it again, or choose another.',
  blank: 'The picture is empty.',
  oneTone: 'Dark and light cannot be told apart: the picture has one tone. More contrast, or side light.',
  crossed: 'The corners cross. Each belongs to its own corner of the piece, going round.',
  flat: 'The corners lie too close together. Move them to the corners of the piece.',
};

/** Why a picture cannot be used, and what to do. */
export function artFault(fault: Fault): string {
  if (fault.id === 'tooLarge')
    return `The picture has ${plain(fault.found, 3)} pixels on a side, more than the ${plain(fault.most, 2)} allowed. Shrink it first.`;
  return faults[fault.id];
}

interface Lines {
  readonly measured: {
    readonly area: number;
    readonly error: number;
    readonly share: number;
    readonly line: { readonly width: number } | null;
    readonly gap: { readonly width: number } | null;
    readonly islands: number;
  };
  readonly pinholes: number;
  readonly specks: number;
}

/** The measurements, one line for each. */
export function measuredLines(
  { measured, pinholes, specks }: Lines,
  clean: boolean,
  units: ReadingUnits,
): readonly string[] {
  const { area, error, share, line, gap, islands } = measured;
  const dust = pinholes + specks;
  const bare = readIn(area / 100, 'cm2', units);
  return [
    `Bare metal ${plain(bare.value, 3)} ± ${amountText(error / 100, 'cm2', units, 1)}, ${amountText(100 * share, '%', units, 2)} of the face.`,
    ...(line ? [`Thinnest line of resist ${length(line.width, units)}.`] : []),
    ...(gap ? [`Thinnest bare gap ${length(gap.width, units)}.`] : []),
    ...(islands > 0 ? [`${count(islands, 'island')} of resist: each holds only by its own grip.`] : []),
    ...(dust > 0
      ? [
          `${count(pinholes, 'pinhole')} and ${count(specks, 'speck')} below the smallest detail: ${clean ? 'filled and removed' : 'kept'}.`,
        ]
      : []),
  ];
}

/** How the wanted depth changes the design. Depths in mm; `greatest` is for the design as drawn. */
export function foreseenLines(
  { lost, lostGrown, gapsClose }: { lost: number; lostGrown: number; gapsClose: boolean },
  depth: number,
  undercut: number,
  greatest: number | null,
  units: ReadingUnits,
): readonly string[] {
  const parts = lost === 1 ? 'one part of the resist is' : `${String(lost)} parts of the resist are`;
  return [
    `At ${length(depth, units)} the bite creeps about ${length(undercut, units)} under the resist.`,
    lost === 0 ? 'Every line keeps some of its width.' : `By then ${parts} gone.`,
    ...(greatest === null
      ? []
      : [
          greatest > 0
            ? `Down to ${length(greatest, units)} every line keeps enough to hold.`
            : 'The thinnest line is too thin for any depth: draw it thicker.',
        ]),
    ...(lost > 0
      ? [
          lostGrown === 0
            ? 'With the resist widened by that much, every line stays.'
            : 'Widening the resist does not save all of them: draw them thicker, or bite less.',
        ]
      : []),
    ...(gapsClose ? ['Widened that much, the thinnest gaps close: they would not be bitten at all.'] : []),
  ];
}
