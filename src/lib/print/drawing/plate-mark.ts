import type { Content, ContentTable, CustomTableLayout } from 'pdfmake/interfaces';
import { ink, mm } from '../paper.ts';

const framed = (line: number, padding: number): CustomTableLayout => ({
  hLineWidth: () => line,
  vLineWidth: () => line,
  hLineColor: () => ink.black,
  vLineColor: () => ink.black,
  paddingLeft: () => padding,
  paddingRight: () => padding,
  paddingTop: () => padding,
  paddingBottom: () => padding,
});

/**
 * The frame used for all boxes: a thin double rule, like the mark that a plate leaves in damp paper.
 * @param padding between the inner rule and the content, pt
 * @param width pt, or '*' for the whole width
 */
export const plateMark = (
  content: Content,
  { padding = 8, width = '*' }: { readonly padding?: number; readonly width?: number | '*' } = {},
): ContentTable => ({
  table: {
    widths: [width],
    body: [[{ table: { widths: ['*'], body: [[content]] }, layout: framed(0.4, padding) }]],
  },
  layout: framed(1, 1.8),
});

/** A table without rules or padding, for layout only. */
export const bare: CustomTableLayout = {
  hLineWidth: () => 0,
  vLineWidth: () => 0,
  paddingLeft: () => 0,
  paddingRight: () => 0,
  paddingTop: () => 0,
  paddingBottom: () => 0,
};

/** A thin rule between rows and below the last; a heavier one below the first if it is a heading. */
export const ruled = (padding: number, headed: boolean): CustomTableLayout => ({
  hLineWidth: (i) => (i === 0 ? 0 : i === 1 && headed ? 0.9 : 0.35),
  vLineWidth: () => 0,
  hLineColor: (i) => (i === 1 && headed ? ink.black : ink.faint),
  paddingLeft: (i) => (i === 0 ? 0 : 5),
  paddingRight: (i, { table }) => (i === (table.body[0]?.length ?? 1) - 1 ? 0 : 5),
  paddingTop: () => padding,
  paddingBottom: () => padding,
});

/** An empty square to tick. @param side mm */
export const checkBox = (side: number, weight = 1): Content => ({
  canvas: [
    {
      type: 'rect',
      x: weight / 2,
      y: weight / 2,
      w: mm(side),
      h: mm(side),
      r: 1.2,
      lineWidth: weight,
      lineColor: ink.black,
    },
  ],
});
