import type { Content, TableCell } from 'pdfmake/interfaces';
import type { Plan } from '../../core/plan/plan.ts';
import type { FigureId } from '../../core/plan/outcome.ts';
import { readingUnitsOf } from '../../core/job/reading-units.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { fromTo } from '$words/locale.ts';
import type { Figure } from '../../core/units/figure.ts';
import { figureName } from '$words/figures.ts';
import { figureGroups, sheetTexts } from '$words/papers.ts';
import { figureParts } from '$words/render.ts';
import { ruled } from '../drawing/plate-mark.ts';
import { surenessBar } from '../drawing/range-bar.ts';
import { faces, ink, tabular } from '../paper.ts';
import { typeset } from '../typeset.ts';
import { sectionHeading } from './section-heading.ts';
import { supplyText } from './job-strip.ts';

const BAR = 84;

const small = (text: string, alignment: 'left' | 'right' = 'left'): TableCell => ({
  text,
  fontSize: 8,
  color: ink.soft,
  alignment,
  margin: [0, 3, 0, 0],
});

function row(id: FigureId, figure: Figure, units: ReadingUnits): TableCell[] {
  const { number, unit, low, high, isExact } = figureParts(figure, units);
  return [
    { text: typeset(figureName(id, units)), fontSize: 9.5 },
    { text: number, bold: true, fontSize: 10.5, alignment: 'right', ...tabular },
    { text: typeset(unit), fontSize: 9.5, font: faces.quiet },
    { svg: surenessBar(figure, BAR), margin: [0, 2, 0, 0] },
    { text: isExact ? '' : fromTo(low, high), fontSize: 9.5, ...tabular },
  ];
}

function group(title: string, rows: TableCell[][]): Content {
  const head: TableCell[] = [
    { text: title, bold: true, fontSize: 11.5, color: ink.accent },
    small(sheetTexts.value, 'right'),
    small(sheetTexts.unit),
    small(''),
    small(sheetTexts.range),
  ];
  return {
    unbreakable: true,
    margin: [0, 0, 0, 9],
    table: { widths: ['*', 50, 42, BAR, 84], body: [head, ...rows] },
    layout: ruled(2.2, true),
  };
}

/** All figures of the plan, in groups. Figures that the plan does not have are left out. */
export function figuresTable(plan: Plan): Content[] {
  const units = readingUnitsOf(plan.job);
  const groups = figureGroups.flatMap(({ title, ids }) => {
    const rows = ids.flatMap((id) => {
      const figure = plan.figures[id];
      return figure ? [row(id, figure, units)] : [];
    });
    return rows.length > 0 ? [group(title, rows)] : [];
  });
  const note = sheetTexts.figuresNote.replace('{supply}', supplyText(plan.job));
  const [first, ...rest] = groups;
  if (first === undefined) return [];
  return [{ unbreakable: true, stack: [sectionHeading(sheetTexts.figures, note), first] }, ...rest];
}
