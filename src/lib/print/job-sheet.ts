import type { Content, ContentSection } from 'pdfmake/interfaces';
import type { Plan } from '../core/plan/plan.ts';
import { sheetTexts } from '../words/papers.ts';
import { testStrip } from './drawing/plates.ts';
import { faces, ink, mm, sheetMargin, sheetWidth, tabular } from './paper.ts';
import { annex } from './sheet/annex.ts';
import { figuresTable } from './sheet/figures-table.ts';
import { glance } from './sheet/glance.ts';
import { jobStrip } from './sheet/job-strip.ts';
import { steps } from './sheet/steps.ts';
import { readings, result } from './sheet/write-down.ts';
import { typeset } from './typeset.ts';

const pageText = (page: number, pages: number): string =>
  sheetTexts.page.replace('{page}', String(page)).replace('{pages}', String(pages));

/** Letters from which a title is long. */
const LONG = 36;

/** A title that stays on one line at the head of a page. */
const shortened = (title: string): string =>
  title.length > 2 * LONG ? `${title.slice(0, 2 * LONG)}…` : title;

function masthead(title: string): Content {
  return {
    columns: [
      {
        width: '*',
        stack: [
          { text: `Etchwright · ${sheetTexts.kind}`, fontSize: 10, bold: true, color: ink.verdigris },
          { text: typeset(title), fontSize: title.length > LONG ? 19 : 28, bold: true, lineHeight: 1 },
        ],
      },
      { width: 'auto', stack: [{ svg: testStrip(132, 26), margin: [10, 6, 0, 0] }] },
    ],
  };
}

const running = (content: object): Content =>
  ({ ...content, fontSize: 8.5, color: ink.soft, font: faces.text }) as Content;

const header =
  (title: string) =>
  (page: number, pages: number): Content =>
    running({
      margin: [sheetMargin, mm(9), sheetMargin, 0],
      columns: [
        { width: '*', text: page === 1 ? '' : typeset(shortened(title)) },
        { width: 'auto', text: pageText(page, pages), ...tabular },
      ],
    });

const footer = (dataVersion: string): Content =>
  running({
    margin: [sheetMargin, mm(5), sheetMargin, 0],
    columns: [
      { width: '*', text: sheetTexts.footer },
      { width: 'auto', text: sheetTexts.data.replace('{version}', dataVersion) },
    ],
  });

/** The job sheet: what to set, what to do, what to write down, and how every figure came about. */
export function jobSheet(plan: Plan): ContentSection {
  const { title, paper } = plan.job;
  return {
    pageMargins: [sheetMargin, mm(17), sheetMargin, mm(17)],
    header: header(title),
    footer: () => footer(plan.dataVersion),
    section: [
      masthead(title),
      jobStrip(plan),
      { ...(glance(plan) as object), margin: [0, 0, 0, 14] } as Content,
      ...steps(plan, sheetWidth(paper)),
      ...figuresTable(plan),
      readings(),
      result(plan),
      ...annex(plan),
    ],
  };
}
