import type { Content, ContentSection, TDocumentDefinitions } from 'pdfmake/interfaces';
import { cutTexts } from '$words/papers.ts';
import { language } from '$words/locale.ts';
import { bathLabel, label } from './bath-label.ts';
import { standingBar } from './drawing/scale-bar.ts';
import { labelOfShelf } from './labelled-bath.ts';
import type { LabelledBath } from './labelled-bath.ts';
import type { LabelsOrder } from './order.ts';
import { faces, ink, mm, pageSizes } from './paper.ts';
import { place } from './place.ts';

/*
 * What must be on a label does not fit 52 × 74 mm at a legible size, so a sheet in landscape holds two by two
 * labels of 105 mm.
 */

/** A sheet of labels in landscape: two by two, spaced for the tallest label. mm */
export const sheetOfLabels = { columns: 2, rows: 2, apart: 4, tallest: 90, margin: 10 } as const;
/** Number of labels on a sheet. */
export const places = sheetOfLabels.columns * sheetOfLabels.rows;

/** Upper left corner of a place, mm from that of the safe area. Places are numbered row by row. */
export const placeOf = (n: number): { readonly x: number; readonly y: number } => ({
  x: (n % sheetOfLabels.columns) * (label.width + sheetOfLabels.apart),
  y: Math.floor(n / sheetOfLabels.columns) * (sheetOfLabels.tallest + sheetOfLabels.apart),
});

/** Sheet, and place on it, of each label, when the first places are used already. */
export const spread = (
  count: number,
  skip: number,
): readonly { readonly sheet: number; readonly place: number }[] =>
  Array.from({ length: count }, (_, i) => ({
    sheet: Math.floor((i + skip) / places),
    place: (i + skip) % places,
  }));

/** First free place after printing, for a sheet that is used again. */
export const nextFree = (count: number, skip: number): number => (count + skip) % places;

/**
 * The text to the right of the labels: how to print, and the test bar that shows whether the printer kept to
 * size.
 */
function margin(left: number, top: number, width: number): Content[] {
  const note = (text: string): Content => ({ text, fontSize: 9, lineHeight: 1.1, margin: [0, 0, 0, 5] });
  const barTop = top + mm(70);
  return [
    place(left, top, width, note(cutTexts.print), note(cutTexts.sheet)),
    place(left, barTop, mm(8), standingBar()),
    place(left + mm(9), barTop, width - mm(9), note(cutTexts.bar), note(cutTexts.measured)),
  ];
}

function sheet(
  labels: readonly { readonly content: Content[] }[],
  paper: LabelsOrder['paper'],
): ContentSection {
  const { height: width } = pageSizes[paper];
  const [left, top] = [mm(sheetOfLabels.margin), mm(sheetOfLabels.margin)];
  const right = left + mm(placeOf(1).x + label.width + 6);
  return {
    pageOrientation: 'landscape',
    pageMargins: [left, top, left, top],
    header: () => null,
    footer: () => null,
    section: [
      // The page needs flowing content: with only fixed positions the PDF library makes none.
      { text: ' ', fontSize: 1 },
      ...labels.flatMap(({ content }) => content),
      ...margin(right, top, width - right - mm(sheetOfLabels.margin)),
    ],
  };
}

/** So many labels on sheets, from the first free place on. @param skip places used already */
export function sheetsOf(
  wanted: readonly LabelledBath[],
  paper: LabelsOrder['paper'],
  skip: number,
): ContentSection[] {
  const laid = spread(wanted.length, skip);
  const sheets = Math.max(0, ...laid.map((one) => one.sheet + 1));
  return Array.from({ length: sheets }, (_, n) =>
    sheet(
      wanted.flatMap((one, i) => {
        const at = laid[i];
        if (at?.sheet !== n) return [];
        const { x, y } = placeOf(at.place);
        const [left, top] = [mm(sheetOfLabels.margin + x), mm(sheetOfLabels.margin + y)];
        return [{ content: bathLabel(one, left, top) }];
      }),
      paper,
    ),
  );
}

/** Labels of baths on the shelf, a copy for each of its copies, from the first free place on. */
export function labelSheets(order: LabelsOrder): TDocumentDefinitions {
  const wanted = order.baths.flatMap(({ bath, copies }) =>
    Array.from({ length: copies }, () => labelOfShelf(bath)),
  );
  return {
    pageSize: pageSizes[order.paper],
    pageOrientation: 'landscape',
    language,
    displayTitle: true,
    version: '1.7',
    info: { title: cutTexts.sheetTitle, creator: 'Etchwright', producer: 'Etchwright' },
    defaultStyle: { font: faces.text, fontSize: 11, color: ink.black },
    content: sheetsOf(wanted, order.paper, order.skip),
  };
}
