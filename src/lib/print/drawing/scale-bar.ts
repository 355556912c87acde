import type { ContentCanvas } from 'pdfmake/interfaces';
import { printedBar } from '../../core/units/printed.ts';
import { ink, mm } from '../paper.ts';

const barLength = printedBar.drawn;

/** Length and line width of the tick at a millimetre, pt. */
function tickAt(i: number): { readonly long: number; readonly lineWidth: number } {
  const long = i % 10 === 0 ? 4 : i % 5 === 0 ? 2.8 : 1.6;
  return { long, lineWidth: i % 10 === 0 ? 0.7 : 0.35 };
}
const lineColor = ink.black;

/**
 * The test bar that shows whether the printer kept to size, with a tick every millimetre, longer ones at 5
 * and 10.
 */
export const scaleBar = (): ContentCanvas => ({
  canvas: [
    { type: 'line', x1: 0, y1: mm(5), x2: mm(barLength), y2: mm(5), lineWidth: 0.8, lineColor },
    ...Array.from({ length: barLength + 1 }, (_, i) => {
      const { long, lineWidth } = tickAt(i);
      return {
        type: 'line' as const,
        x1: mm(i),
        y1: mm(5),
        x2: mm(i),
        y2: mm(5 - long),
        lineWidth,
        lineColor,
      };
    }),
  ],
});

/** The same bar, upright. */
export const standingBar = (): ContentCanvas => ({
  canvas: [
    { type: 'line', x1: mm(5), y1: 0, x2: mm(5), y2: mm(barLength), lineWidth: 0.8, lineColor },
    ...Array.from({ length: barLength + 1 }, (_, i) => {
      const { long, lineWidth } = tickAt(i);
      return {
        type: 'line' as const,
        x1: mm(5),
        y1: mm(i),
        x2: mm(5 - long),
        y2: mm(i),
        lineWidth,
        lineColor,
      };
    }),
  ],
});
