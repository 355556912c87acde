import type { Content } from 'pdfmake/interfaces';
import type { Plan } from '../../core/plan/plan.ts';
import { stepIds } from '../../core/rules/rule.ts';
import { printPlan, stepTitles } from '$words/printed-plan.ts';
import { bare, checkBox } from '../drawing/plate-mark.ts';
import { stepPlates } from '../drawing/plates.ts';
import { signalPanel } from '../drawing/signal-panel.ts';
import { ink, tabular } from '../paper.ts';
import { typeset } from '../typeset.ts';

/** Side of a tick box on the sheet, mm. */
export const TICK = 5.2;

function heading(number: number, title: string, contentWidth: number): Content {
  return {
    stack: [
      {
        columns: [
          { text: String(number), width: 22, bold: true, fontSize: 17, color: ink.accent, ...tabular },
          { text: title, width: '*', bold: true, fontSize: 17 },
          { width: 'auto', stack: [{ svg: stepPlates(number - 1, stepIds.length), margin: [0, 7, 0, 0] }] },
        ],
      },
      {
        canvas: [
          { type: 'line', x1: 0, y1: 0, x2: contentWidth, y2: 0, lineWidth: 0.9, lineColor: ink.black },
          { type: 'line', x1: 0, y1: 2, x2: contentWidth, y2: 2, lineWidth: 0.3, lineColor: ink.black },
        ],
        margin: [0, 1, 0, 4],
      },
    ],
  };
}

const line = (step: number, index: number, text: string): Content => ({
  table: {
    widths: [22, 24, '*'],
    dontBreakRows: true,
    body: [
      [
        checkBox(TICK, 0.9),
        { text: `${step}.${index + 1}`, fontSize: 9.5, color: ink.soft, margin: [0, 2.4, 0, 0], ...tabular },
        { text: typeset(text), fontSize: 11, lineHeight: 0.95, margin: [0, 1, 0, 0] },
      ],
    ],
  },
  layout: { ...bare, paddingTop: () => 1.6, paddingBottom: () => 2 },
});

/**
 * All steps of the job in order. Safety messages are between a step's title and its first line, never later.
 * A step is never split between pages, so that nobody has to turn the sheet with wet gloves.
 * @param contentWidth pt
 */
export function steps(plan: Plan, contentWidth: number): Content[] {
  const { cautions, steps: printed } = printPlan(plan);
  return stepIds.flatMap((step, i): Content[] => {
    const lines = printed.find((entry) => entry.step === step)?.lines ?? [];
    const own = cautions.filter((caution) => caution.step === step);
    if (lines.length === 0 && own.length === 0) return [];
    return [
      {
        unbreakable: true,
        margin: [0, 0, 0, 9],
        stack: [
          heading(i + 1, stepTitles[step], contentWidth),
          ...own.map(({ signal, text }) => signalPanel(signal, text)),
          ...lines.map(({ text }, index) => line(i + 1, index, text)),
        ],
      },
    ];
  });
}
