import type { Content, ContentSection } from 'pdfmake/interfaces';
import { practice } from '../core/facts/limits.ts';
import { readingUnitsOf } from '../core/job/reading-units.ts';
import { layOutOf, settingLinesOf } from '../core/plan/lay-out.ts';
import type { Plan } from '../core/plan/plan.ts';
import { layOutTexts } from '$words/lay-out.ts';
import { hoursText, planTexts } from '$words/plan-page.ts';
import { fill } from '$words/render.ts';
import { workLine } from '$words/work-line.ts';
import { checkBox } from './drawing/plate-mark.ts';
import { testStrip } from './drawing/plates.ts';
import { ink, mm, sheetMargin } from './paper.ts';
import { typeset } from './typeset.ts';

const heading = (text: string): Content => ({ text, bold: true, fontSize: 14, margin: [0, 10, 0, 4] });

const toTick = (text: string): Content => ({
  columns: [
    { width: 24, stack: [checkBox(5.4, 0.9)] },
    { width: '*', text: typeset(text), fontSize: 11.5, lineHeight: 1.05 },
  ],
  margin: [0, 0, 0, 4],
});

/** The list for the shop: what to buy and lay out, what will be set, and how the time is divided. */
export function listPage(plan: Plan): ContentSection {
  const units = readingUnitsOf(plan.job);
  const isNew = plan.job.bath.record === null;
  const set = settingLinesOf(plan);
  return {
    pageMargins: [sheetMargin, mm(16), sheetMargin, mm(14)],
    header: () => null,
    footer: () => null,
    section: [
      { text: `Etchwright · ${planTexts.layOut}`, fontSize: 10, bold: true, color: ink.accent },
      { text: typeset(plan.job.title), fontSize: 26, bold: true, lineHeight: 1 },
      { svg: testStrip(132, 26), margin: [0, 8, 0, 0] },
      ...[false, true].flatMap((isThere): readonly Content[] => {
        const lines = layOutOf(plan).filter((line) => line.isThere === isThere);
        return lines.length === 0
          ? []
          : [
              heading(isThere ? planTexts.have : planTexts.get),
              ...lines.map(({ id, params }) => toTick(fill(layOutTexts[id], params, units))),
            ];
      }),
      ...(set.length > 0 ? [heading(planTexts.set)] : []),
      ...set.map(({ id, params }): Content => ({
        text: typeset(workLine(id, params, units)),
        fontSize: 11.5,
      })),
      heading(planTexts.hours),
      ...hoursText(isNew, practice.dissolveHours.value, plan.settings?.minutes.value ?? null).map(
        (text): Content => ({ text: typeset(text), fontSize: 11.5 }),
      ),
    ],
  };
}
