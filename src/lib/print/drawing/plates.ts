import { ink } from '../paper.ts';
import { hatchPath, round, svg } from './hatch.ts';

/** Size of one small plate, and the distance from one to the next, pt. */
const small = { width: 8, height: 10, pitch: 10.5 };

const plate = (x: number, width: number, height: number, stroke: number): string =>
  `<rect x="${round(x + 0.4)}" y="0.4" width="${round(width - 0.8)}" height="${round(height - 0.8)}" fill="#fff" stroke="${ink.black}" stroke-width="${stroke}"/>`;

/**
 * The position of a step: a row of small plates, hatched when done, open with a heavy left rule now, empty
 * later. The screens show the same row.
 */
export function stepPlates(index: number, count: number): string {
  const shapes = Array.from({ length: count }, (_, i) => {
    const x = i * small.pitch;
    const frame = plate(x, small.width, small.height, 0.6);
    if (i < index)
      return `${frame}<path d="${hatchPath(x, 0, small.width, small.height, 2.6)}" stroke="${ink.black}" stroke-width="0.5"/>`;
    return i === index
      ? `${frame}<rect x="${round(x)}" y="0" width="3" height="${small.height}" fill="${ink.accent}"/>`
      : frame;
  });
  return svg(count * small.pitch, small.height, shapes.join(''));
}

/** A test strip: one plate etched in steps, shown as tones from light to full. */
export function testStrip(width: number, height: number): string {
  const spacings = [0, 7, 4.6, 3.1, 2.1, 1.4];
  const cell = width / spacings.length;
  const shapes = spacings.map((spacing, i) => {
    const x = i * cell;
    const tone =
      spacing === 0
        ? ''
        : `<path d="${hatchPath(x, 0, cell, height, spacing)}" stroke="${ink.black}" stroke-width="0.55"/>`;
    return `${tone}<path d="M${round(x)} 0V${round(height)}" stroke="${ink.black}" stroke-width="0.6"/>`;
  });
  const frame = `<rect x="0.4" y="0.4" width="${round(width - 0.8)}" height="${round(height - 0.8)}" fill="none" stroke="${ink.black}" stroke-width="0.8"/>`;
  return svg(width, height, shapes.join('') + frame);
}
