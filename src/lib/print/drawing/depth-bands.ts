import type { Band, DepthMap } from '../../core/field/depth-map.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { numberedBands } from '$words/bite-map.ts';
import { faces, ink } from '../paper.ts';
import { round, svg } from './hatch.ts';

/**
 * Strength of the ink for the n-th band, 0 to 1. All bands have one hue, so that a grey print has the same
 * order.
 */
export const strengthOf = (n: number, count: number): number =>
  count === 1 ? 0.5 : 0.08 + (0.87 * n) / (count - 1);

/**
 * The accent colour mixed with the paper's, as #rrggbb, because printers do not print transparent ink well.
 */
export function thinned(strength: number): string {
  const channels = [1, 3, 5].map((at) => parseInt(ink.accent.slice(at, at + 2), 16));
  return `#${channels
    .map((one) =>
      Math.round(255 + strength * (one - 255))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
}

/** Size of a numeral, pt. */
const NUMERAL = { width: 5.2, height: 10 } as const;
/** From this strength on, numbers are white. */
const DARK = 0.6;

/** A face with its bands of depth and their numbers. @param side length of the longer side, pt */
export function depthBands(map: DepthMap, bands: readonly Band[], side: number, units: ReadingUnits): string {
  const { columns, rows } = map;
  const [width, height] = [columns.at(-1) ?? 1, rows.at(-1) ?? 1];
  const scale = side / Math.max(width, height);
  const shapes = bands.map(({ runs }, n) => {
    const path = runs.map(
      (run) =>
        `M${round(run.x * scale)} ${round((height - run.y - run.height) * scale)}h${round(run.width * scale)}v${round(run.height * scale)}h${round(-run.width * scale)}z`,
    );
    return `<path d="${path.join('')}" fill="${thinned(strengthOf(n, bands.length))}"/>`;
  });
  const numbers = numberedBands(bands, map, scale, NUMERAL, units).map(({ number, n, x, y }) => {
    const colour = strengthOf(n, bands.length) > DARK ? ink.paper : ink.black;
    return `<text x="${round(x)}" y="${round(y + 3)}" font-family="${faces.text}" font-size="8.5" text-anchor="middle" fill="${colour}">${number.replace('<', '&lt;').replace('>', '&gt;')}</text>`;
  });
  const frame = `<rect x="0.25" y="0.25" width="${round(width * scale - 0.5)}" height="${round(height * scale - 0.5)}" fill="none" stroke="${ink.black}" stroke-width="0.5"/>`;
  return svg(width * scale, height * scale, shapes.join('') + numbers.join('') + frame);
}
