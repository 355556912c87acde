import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { CellAbove } from '../../core/cell/bite-map.ts';
import type { Band, DepthMap, Profile } from '../../core/field/depth-map.ts';
import { plain } from './locale.ts';
import { amountText, readIn, symbolRead, withUnit } from './units.ts';

export const biteMapTexts = {
  title: 'Where it bites deepest',
  solving: 'Solving the cell. A first look comes at once, the finer one takes some seconds.',
  finer: 'Finer grid',
  stop: 'Stop at this look',
  stopped: 'Stopped at the first look.',
  unsolved:
    'Not solved: a jug has no known walls, and pieces that cannot hang side by side have no places. Give the tub’s inner sizes, or fewer pieces.',
  failed: 'Not solved:',
  drawing: 'The face toward the plate, stronger where it is bitten deeper',
  model: 'Model, not measured.',
  scattered: 'As if the bare parts were all over the face: add your drawing to place them.',
  section: 'Section through the middle of the face, depths enlarged',
  sectionTable: 'The section in numbers',
  masked: 'masked',
  above: 'The tub from above, with the paths of the current',
  disc: 'A disc is worked out and drawn as a square of the same area.',
  depth: 'Depth',
  share: 'Share',
} as const;

export const bandColumns = [
  { id: 'depth', label: biteMapTexts.depth },
  { id: 'share', label: biteMapTexts.share, isNumber: true },
] as const;

export const faceColumns = [
  { id: 'face', label: 'Leaves the piece', isHead: true },
  { id: 'lines', label: 'Lines', isNumber: true },
] as const;

export const profileColumns = (units: ReadingUnits) =>
  [
    { id: 'place', label: `${symbolRead('mm', units)} from the left`, isHead: true },
    { id: 'depth', label: `Depth,\u00a0${symbolRead('um', units)}`, isNumber: true },
  ] as const;

/**
 * A depth without its unit.
 * @param depth um
 */
function depthNumber(depth: number, units: ReadingUnits): string {
  const { value, finest } = readIn(depth, 'um', units);
  return plain(value, 3, finest);
}

export function bandText({ from, to }: Band, units: ReadingUnits): string {
  const depth = (um: number): string => amountText(um, 'um', units, 3);
  if (from === null) return to === null ? 'alike' : `under ${depth(to)}`;
  return to === null ? `${depth(from)} and more` : `${depthNumber(from, units)} to ${depth(to)}`;
}

/** Share of the bare area that a band covers. */
export const bandShare = ({ share }: Band): string => `${plain(100 * share, 2)} %`;

/** The number written inside a band. */
export function bandNumber({ from, to }: Band, units: ReadingUnits): string {
  if (from === null) return to === null ? '' : `<${depthNumber(to, units)}`;
  return to === null ? `>${depthNumber(from, units)}` : depthNumber((from + to) / 2, units);
}

/** The number of a band, with its position in a drawing. */
export interface Numbered {
  readonly number: string;
  /** Index of the band. */
  readonly n: number;
  readonly x: number;
  readonly y: number;
}

/**
 * Numbers of the bands with room for one: no number crosses a rim or overlaps another.
 * @param scale drawing units for a metre
 * @param letter width of a numeral and height of a line, drawing units
 */
export function numberedBands(
  bands: readonly Band[],
  { columns, rows }: DepthMap,
  scale: number,
  letter: { readonly width: number; readonly height: number },
  units: ReadingUnits,
): readonly Numbered[] {
  const [width, height] = [(columns.at(-1) ?? 0) * scale, (rows.at(-1) ?? 0) * scale];
  const placed: Numbered[] = [];
  const half = (number: string): number => (letter.width * number.length) / 2;
  const order = bands.map((_, n) => n).sort((a, b) => (bands[b]?.share ?? 0) - (bands[a]?.share ?? 0));
  for (const n of order) {
    const band = bands[n];
    if (!band) continue;
    const number = bandNumber(band, units);
    const [x, y] = [band.at[0] * scale, height - band.at[1] * scale];
    const isOut =
      x < half(number) || x > width - half(number) || y < letter.height / 2 || y > height - letter.height / 2;
    const isOver = placed.some(
      (other) =>
        Math.abs(other.y - y) < letter.height && Math.abs(other.x - x) < half(number) + half(other.number),
    );
    const widest = Math.max(...band.runs.map((run) => run.width)) * scale;
    if (!isOut && !isOver && widest >= 2 * half(number)) placed.push({ number, n, x, y });
  }
  return placed;
}

/** Summary of the map, in two sentences. */
export function biteMapSummary(
  bands: readonly Band[],
  mean: number,
  error: number | null,
  units: ReadingUnits,
): string {
  const [first, last] = [bands.at(0), bands.at(-1)];
  if (!first || !last) return '';
  const trust = error === null ? '' : ` The grid is off by ${withUnit(plain(100 * error, 1), '%')} or so.`;
  return `For ${amountText(mean, 'um', units, 3)} on average the shallowest places get ${bandText(first, units)}, the deepest ${bandText(last, units)}.${trust}`;
}

/**
 * Summary of the section.
 * @param mean um
 */
export function profileSummary({ steps }: Profile, mean: number, units: ReadingUnits): string {
  const depths = steps.flatMap(({ relative }) => (relative > 0 ? [relative * mean] : []));
  if (depths.length === 0) return 'No bare metal on this line.';
  const [least, most] = [Math.min(...depths), Math.max(...depths)];
  return `Across the middle: ${depthNumber(least, units)} to ${amountText(most, 'um', units, 3)} deep, depths drawn enlarged.`;
}

type Step = Profile['steps'][number];

export function stepPlace({ from, to }: Step, units: ReadingUnits): string {
  const read = (metres: number): string => plain(readIn(1e3 * metres, 'mm', units).value, 3);
  return `${read(from)} to ${read(to)}`;
}

/** @param mean um */
export const stepDepth = ({ relative }: Step, mean: number, units: ReadingUnits): string =>
  relative === 0 ? biteMapTexts.masked : depthNumber(relative * mean, units);

/** How many drawn paths of the current begin on each face of the first piece. */
export function linesByFace({
  plates,
  lines,
}: CellAbove): readonly { readonly face: string; readonly lines: number }[] {
  const [first] = plates;
  if (!first) return [];
  const front = lines.filter(([start]) => (start?.[0] ?? 0) > first.x + first.thickness / 2 + 1e-9).length;
  const both =
    first.thickness > 0
      ? front
      : lines.filter(([start, next]) => (next?.[0] ?? 0) >= (start?.[0] ?? 0)).length;
  return [
    { face: 'by the face toward the plate', lines: both },
    { face: 'by its back', lines: lines.length - both },
  ];
}

/** Summary of the view of the tub from above. */
export function aboveSummary(above: CellAbove): string {
  const [front] = linesByFace(above);
  const all = above.lines.length;
  const back = all - (front?.lines ?? 0);
  return `From above, at the height of the piece’s middle: ${String(all)} lines, each an equal part of the current. ${
    back === 0 ? 'All leave by the face toward the plate.' : `${String(back)} leave by the back and go round.`
  } Where they are close together, the bite is deep.`;
}
