import type { Content, ContentSection } from 'pdfmake/interfaces';
import type { Plan } from '../core/plan/plan.ts';
import { cutTexts } from '../words/papers.ts';
import { bathLabel, label, labelHeight } from './bath-label.ts';
import { benchCard, card } from './bench-card.ts';
import { scaleBar } from './drawing/scale-bar.ts';
import { ink, mm, pageSizes } from './paper.ts';
import { place } from './place.ts';

/** Area that prints on A4 and on US Letter alike with 10 mm margins, mm. */
export const safeArea = { width: 190, height: 259, margin: 10 } as const;

/** Space between the cut-outs, mm. */
const GUTTER = 7;

const notes: Content[] = [
  { text: cutTexts.title, bold: true, fontSize: 12, color: ink.verdigris, margin: [0, 0, 0, 3] },
  ...cutTexts.lines.map((text): Content => ({ text, fontSize: 9.5, lineHeight: 1.14, margin: [0, 0, 0, 5] })),
];

/** The page to cut up: bench card above, bath label and a measuring bar below. */
export function cardPage(plan: Plan): ContentSection {
  const left = (pageSizes[plan.job.paper].width - mm(safeArea.width)) / 2;
  const top = mm(safeArea.margin);
  const labelTop = top + mm(card.height + GUTTER);
  const barTop = labelTop + mm(labelHeight(plan) + GUTTER);
  const besideLabel = left + mm(label.width + GUTTER);
  return {
    pageMargins: [left, top, left, top],
    header: () => null,
    footer: () => null,
    section: [
      // A page exists only once something flows onto it; all else here stands at fixed places.
      { text: ' ', fontSize: 1 },
      ...benchCard(plan, left, top),
      ...bathLabel(plan, left, labelTop),
      place(besideLabel, labelTop, mm(safeArea.width - label.width - GUTTER), ...notes),
      place(left, barTop, mm(102), scaleBar()),
      place(left, barTop + mm(6), mm(100), {
        columns: [
          { text: '0', fontSize: 9, width: '*' },
          { text: cutTexts.bar, fontSize: 9, alignment: 'right', width: '*' },
        ],
      }),
      place(besideLabel, barTop + mm(2), mm(70), { text: cutTexts.measured, fontSize: 11 }),
    ],
  };
}
