import type { Content } from 'pdfmake/interfaces';

/** Puts content at a fixed position. @param x,y,width pt, from the page's upper left corner */
export const place = (x: number, y: number, width: number, ...stack: Content[]): Content => ({
  absolutePosition: { x, y },
  columns: [{ width, stack }],
});
