import type { Content, ContentSection } from 'pdfmake/interfaces';
import type { JobInput } from '../core/plan/job-input.ts';
import { cutTexts } from '$words/papers.ts';
import { scaleBar } from './drawing/scale-bar.ts';
import { mm, pageSizes } from './paper.ts';
import { place } from './place.ts';

/** Area that both A4 and US Letter can print with 10 mm margins, mm. */
export const safeArea = { width: 190, height: 259, margin: 10 } as const;

/** Space between the cut-outs and the test bar, mm. */
const GUTTER = 7;

interface CutOuts {
  readonly content: readonly Content[];
  /** where the lowest cut-out ends, pt from the page's upper edge */
  readonly bottom: number;
}

/**
 * A page to cut up, with the test bar at its foot that shows whether the printer kept to size.
 * @param draw given the upper left corner of the safe area, pt
 */
export function cutPage(
  paper: JobInput['paper'],
  draw: (left: number, top: number) => CutOuts,
): ContentSection {
  const left = (pageSizes[paper].width - mm(safeArea.width)) / 2;
  const top = mm(safeArea.margin);
  const { content, bottom } = draw(left, top);
  const barTop = bottom + mm(GUTTER);
  return {
    pageMargins: [left, top, left, top],
    header: () => null,
    footer: () => null,
    section: [
      // The page needs flowing content: with only fixed positions the PDF library makes none.
      { text: ' ', fontSize: 1 },
      ...content,
      place(left, barTop, mm(102), scaleBar()),
      place(left, barTop + mm(6), mm(100), {
        columns: [
          { text: '0', fontSize: 9, width: '*' },
          { text: cutTexts.bar, fontSize: 9, alignment: 'right', width: '*' },
        ],
      }),
      place(left + mm(112), barTop + mm(2), mm(70), { text: cutTexts.measured, fontSize: 11 }),
    ],
  };
}
