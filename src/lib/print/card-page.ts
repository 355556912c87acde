import type { Content, ContentSection } from 'pdfmake/interfaces';
import { readingUnitsOf } from '../core/job/reading-units.ts';
import type { Plan } from '../core/plan/plan.ts';
import { cutTexts, laminateText } from '$words/papers.ts';
import { bathLabel, label, labelHeight } from './bath-label.ts';
import { benchCard, card } from './bench-card.ts';
import { cutPage, safeArea } from './cut-page.ts';
import { labelOfPlan } from './labelled-bath.ts';
import type { JobMarks } from './order.ts';
import { ink, mm } from './paper.ts';
import { place } from './place.ts';

/** Space between the cut-outs, mm. */
const GUTTER = 7;

const notes = (lines: readonly string[]): Content[] => [
  { text: cutTexts.title, bold: true, fontSize: 12, color: ink.accent, margin: [0, 0, 0, 3] },
  ...lines.map((text): Content => ({ text, fontSize: 9.5, lineHeight: 1.14, margin: [0, 0, 0, 5] })),
];

interface Wanted {
  readonly card: boolean;
  readonly label: boolean;
  readonly marks: JobMarks | null;
}

/** The page to cut up: bench card above, bath label below, or only one of them. */
export function cardPage(plan: Plan, wanted: Wanted): ContentSection {
  const { marks } = wanted;
  const bath = labelOfPlan(plan, marks?.code ?? '');
  return cutPage(plan.job.paper, (left, top) => {
    const labelTop = wanted.card ? top + mm(card.height + GUTTER) : top;
    const besideLabel = left + mm(label.width + GUTTER);
    const told = notes([
      cutTexts.print,
      ...(wanted.card ? [laminateText('card', readingUnitsOf(plan.job))] : []),
      ...(wanted.label ? [cutTexts.label] : []),
    ]);
    const wide = mm(safeArea.width);
    return {
      content: [
        ...(wanted.card ? benchCard(plan, marks, left, top) : []),
        ...(wanted.label ? bathLabel(bath, left, labelTop) : []),
        wanted.label
          ? place(besideLabel, labelTop, wide - mm(label.width + GUTTER), ...told)
          : place(left, labelTop, wide, ...told),
      ],
      bottom: labelTop + mm(wanted.label ? labelHeight(bath) : 30),
    };
  });
}
