import type { Content, TableCell } from 'pdfmake/interfaces';
import { hasFineScale, hasIn } from '../../core/cell/setup.ts';
import type { FigureId } from '../../core/plan/outcome.ts';
import { readingUnitsOf } from '../../core/job/reading-units.ts';
import { readableIn } from '../../core/plan/run-by-plan.ts';
import type { Plan } from '../../core/plan/plan.ts';
import { figureParts } from '$words/render.ts';
import { symbolRead, withSymbol } from '$words/units.ts';
import { readingHeads, resultLines, resultTexts, sheetTexts } from '$words/papers.ts';
import { bare, checkBox, plateMark } from '../drawing/plate-mark.ts';
import { ink, tabular } from '../paper.ts';
import { typeset } from '../typeset.ts';
import { sectionHeading } from './section-heading.ts';

const READINGS = 13;

/** A table to fill in with a pencil. Its rows are high enough for a hand that is still stiff from a glove. */
export function readings({ job }: Plan): Content {
  const readable = readableIn(job);
  const heads = readingHeads(readable, readingUnitsOf(job));
  return {
    unbreakable: true,
    margin: [0, 0, 0, 12],
    stack: [
      sectionHeading(sheetTexts.readings, sheetTexts.readingsNote),
      {
        table: {
          widths: [14, 58, 44, ...readable.map(() => 44), '*'],
          heights: (i) => (i === 0 ? 12 : 21),
          body: [
            heads.map((head): TableCell => ({ text: head, fontSize: 9, color: ink.soft })),
            ...Array.from({ length: READINGS }, (_, i): TableCell[] => [
              { text: String(i + 1), fontSize: 9, color: ink.soft, margin: [0, 5, 0, 0], ...tabular },
              ...heads.slice(1).map((): TableCell => ({ text: '' })),
            ]),
          ],
        },
        layout: {
          hLineWidth: (i) => (i === 0 ? 0 : i === 1 ? 0.9 : 0.4),
          vLineWidth: (i) => (i <= 1 || i === heads.length ? 0 : 0.4),
          hLineColor: (i) => (i === 1 ? ink.black : ink.soft),
          vLineColor: () => ink.soft,
          paddingTop: () => 1,
          paddingBottom: () => 1,
          paddingLeft: (i) => (i === 0 ? 0 : 4),
        },
      },
    ],
  };
}

/** A blank to write in, with its unit after it and the planned value below its name. */
function blank(name: string, unit: string, plan: string | null): Content {
  return {
    columns: [
      {
        width: '*',
        stack: [
          { text: name, fontSize: 10.5 },
          { text: plan === null ? ' ' : typeset(plan), fontSize: 8.5, color: ink.soft },
        ],
      },
      {
        width: 70,
        canvas: [{ type: 'line', x1: 0, y1: 15, x2: 66, y2: 15, lineWidth: 0.6, lineColor: ink.black }],
      },
      { width: 26, text: typeset(unit), fontSize: 10.5, margin: [0, 3, 0, 0] },
    ],
    margin: [0, 3, 0, 3],
  };
}

const tick = (text: string): Content => ({
  columns: [
    { width: 22, stack: [checkBox(5.2, 0.9)] },
    { width: '*', text, fontSize: 10.5, margin: [0, 2, 0, 0] },
  ],
});

/** The results, to be written beside the planned values. */
export function result(plan: Plan): Content {
  const units = readingUnitsOf(plan.job);
  const foretold = (id: FigureId): string | null => {
    const figure = plan.figures[id];
    if (!figure) return null;
    const { number, unit } = figureParts(figure, units);
    return resultTexts.plan.replace('{value}', withSymbol(number, unit));
  };
  const isThere = (needs: (typeof resultLines)[number]['needs']): boolean =>
    needs === undefined ||
    (needs === 'amps'
      ? plan.job.supply.showsAmps
      : needs === 'scale'
        ? hasFineScale(plan.job)
        : hasIn(plan.job, needs));
  const blanks = resultLines
    .filter(({ needs }) => isThere(needs))
    .map(({ name, unit, plan: id }) =>
      blank(name, symbolRead(unit, units), id === null ? null : foretold(id)),
    );
  const half = Math.ceil(blanks.length / 2);
  const line = { type: 'line', x1: 0, x2: 380, lineWidth: 0.5, lineColor: ink.soft } as const;
  return {
    unbreakable: true,
    stack: [
      { text: sheetTexts.result, bold: true, fontSize: 17, margin: [0, 0, 0, 4] },
      plateMark([
        {
          table: {
            widths: ['*', '*'],
            body: [[{ stack: blanks.slice(0, half) }, { stack: blanks.slice(half) }]],
          },
          layout: {
            ...bare,
            paddingLeft: (i) => (i === 0 ? 0 : 12),
            paddingRight: (i) => (i === 0 ? 12 : 0),
          },
        },
        { columns: [tick(resultTexts.photo), tick(resultTexts.label)], margin: [0, 6, 0, 4] },
        {
          columns: [
            { width: 70, text: resultTexts.next, fontSize: 10.5, bold: true, margin: [0, 6, 0, 0] },
            {
              width: '*',
              canvas: [
                { ...line, y1: 18, y2: 18 },
                { ...line, y1: 38, y2: 38 },
                { ...line, y1: 58, y2: 58 },
              ],
            },
          ],
        },
      ]),
    ],
  };
}
