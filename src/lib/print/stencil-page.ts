import { printedBar } from '../core/units/printed.ts';
import type { StencilOrder } from './order.ts';
import { mm, pageSizes } from './paper.ts';

/** Sizes in mm: margin of the page, space between copies, and height of the note and the bar at its foot. */
export const PAGE = { margin: 12, apart: 6, foot: 34 } as const;
/** Columns and rows of copies that fit on a page; 0 when not even one fits. */
export function copiesOn({
  paper,
  width,
  height,
  scale,
}: Pick<StencilOrder, 'paper' | 'width' | 'height' | 'scale'>): {
  readonly columns: number;
  readonly rows: number;
} {
  const page = pageSizes[paper];
  const fit = (room: number, size: number): number =>
    Math.max(0, Math.floor((room + mm(PAGE.apart)) / (mm(size * scale) + mm(PAGE.apart))));
  return {
    columns: fit(page.width - 2 * mm(PAGE.margin), width),
    rows: fit(page.height - 2 * mm(PAGE.margin) - mm(PAGE.foot), height),
  };
}

/**
 * The scale that makes a bar of this measured length as long as drawn; null for a length that is not
 * plausible. @param measured mm
 */
export const barScale = (measured: number): number | null =>
  measured >= printedBar.least && measured <= printedBar.most ? printedBar.drawn / measured : null;
