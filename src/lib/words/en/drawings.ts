import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { calliperText, rulerText } from './units.ts';

/** Texts of the drawing of tub, piece and plate, from above and from the side. */
export const tubTexts = {
  title: 'Tub, piece and plate to scale, from above and from the side',
  fromAbove: 'from above',
  fromSide: 'from the side',
  piece: 'piece',
  plate: 'plate',
  gap: (length: string): string => `gap ${length}`,
  long: (length: string): string => `${length} long`,
  wide: (length: string): string => `${length} wide`,
  across: (length: string): string => `${length} across`,
  deep: (length: string): string => `${length} deep`,
  box: (length: string, width: string, fill: string): string =>
    `Tub ${length} long, ${width} wide inside, liquid ${fill} deep.`,
  round: (diameter: string, fill: string): string =>
    `Round tub ${diameter} across inside, liquid ${fill} deep.`,
  unknown: 'The tub’s shape is not known, so no walls are drawn: see that the liquid covers piece and plate.',
};

interface Size {
  readonly width: number;
  readonly height: number;
}

/** What hangs in the tub, in a sentence. All lengths in m. */
export function partsText(
  count: number,
  piece: Size,
  plate: Size & { readonly gap: number },
  units: ReadingUnits,
): string {
  const as = (metres: number): string => rulerText(metres, units);
  const pieces = count > 1 ? `${String(count)} pieces` : 'Piece';
  return (
    `${pieces} on plus, ${as(piece.width)} wide and ${as(piece.height)} high; ` +
    `plate on minus, ${as(plate.width)} by ${as(plate.height)}; gap ${as(plate.gap)}.`
  );
}

/** The piece, drawn in proportion. */
export const shapeTexts = {
  disc: (across: string): string => `The piece in proportion: Disc, ${across} across`,
  other: (width: string, height: string): string => `The piece in proportion: ${width} by ${height}`,
};

/** The section through the sheet. */
export const sectionTexts = {
  title: 'Section through the sheet at an open line in the resist',
  resist: 'resist',
  enlarged: (times: number): string => `about ${String(times)} times life size`,
};

/** The parts of the section, with lengths in m. */
interface Cut {
  readonly thickness: number;
  readonly depth: number;
  readonly undercut: number;
  readonly faces: 1 | 2;
}

/** Summary of the section, in a sentence or two. */
export function sectionSummary(
  { thickness, depth, undercut, faces }: Cut,
  isThrough: boolean,
  units: ReadingUnits,
): string {
  const [sheet, aside] = [calliperText(thickness, units), calliperText(undercut, units)];
  return isThrough
    ? `${sheet} sheet, bitten right through; about ${aside} sideways under the resist.`
    : `${sheet} sheet: ${rulerText(depth, units)} down${faces === 2 ? ' on each face' : ''}, about ${aside} sideways under the resist. ${calliperText(Math.max(0, thickness - faces * depth), units)} of metal stays below.`;
}
