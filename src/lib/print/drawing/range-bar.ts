import { ink } from '../paper.ts';
import { hatchPath, round, svg } from './hatch.ts';

interface Span {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A figure's range as a hatched band, and its value as a tick. The limits are written beside it. */
export function rangeBand({ value, low, high }: Span, width: number): string {
  const at = high > low ? ((value - low) / (high - low)) * (width - 2) + 1 : width / 2;
  return svg(
    width,
    9,
    `<path d="${hatchPath(0.5, 2.5, width - 1, 4, 2)}" stroke="${ink.soft}" stroke-width="0.4"/>` +
      `<rect x="0.5" y="2.5" width="${round(width - 1)}" height="4" fill="none" stroke="${ink.black}" stroke-width="0.5"/>` +
      `<rect x="${round(at - 1)}" y="0" width="2" height="9" fill="${ink.black}"/>`,
  );
}

/** The ends of the scale are the value times and divided by this. */
const REACH = 4;

/** Position of a multiple of the value on the common scale, pt; at the end when it is beyond. */
function placeOf(multiple: number, width: number): number {
  const share = Math.log(Math.max(multiple, 1e-9)) / Math.log(REACH);
  return ((Math.min(1, Math.max(-1, share)) + 1) / 2) * (width - 2) + 1;
}

/**
 * How exact a figure is, on one scale for all figures: from a quarter to four times its value, with the value
 * in the middle. A long band means an inexact number, whatever its unit.
 */
export function surenessBar({ value, low, high }: Span, width: number): string {
  const middle = placeOf(1, width);
  const ticks = [1 / REACH, 1 / 2, 2, REACH]
    .map((multiple) => `M${round(placeOf(multiple, width))} 3V6`)
    .join('');
  const axis = `<path d="M1 4.5H${round(width - 1)}${ticks}" stroke="${ink.faint}" stroke-width="0.4"/>`;
  const [from, to] = [placeOf(low / value, width), placeOf(high / value, width)];
  const band =
    to - from < 0.8
      ? ''
      : `<rect x="${round(from)}" y="2.5" width="${round(to - from)}" height="4" fill="#fff" stroke="${ink.black}" stroke-width="0.45"/>` +
        `<path d="${hatchPath(from, 2.5, to - from, 4, 1.9)}" stroke="${ink.black}" stroke-width="0.4"/>`;
  const tick = `<rect x="${round(middle - 0.7)}" y="0.5" width="1.4" height="8" fill="${ink.black}"/>`;
  return svg(width, 9, axis + band + tick);
}
