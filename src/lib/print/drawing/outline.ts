import type { Content } from 'pdfmake/interfaces';
import { ink, mm } from '../paper.ts';
import { place } from '../place.ts';

/** A thin line with round corners that shows where to cut. @param x,y pt @param width,height mm */
export const outline = (x: number, y: number, width: number, height: number): Content =>
  place(x, y, mm(width), {
    canvas: [
      {
        type: 'rect',
        x: 0,
        y: 0,
        w: mm(width),
        h: mm(height),
        r: mm(4),
        lineWidth: 0.4,
        lineColor: ink.soft,
      },
    ],
  });
