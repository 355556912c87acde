import type { Column, Content, ContentSection } from 'pdfmake/interfaces';
import type { JobInput } from '../core/plan/job-input.ts';
import type { Plan } from '../core/plan/plan.ts';
import { sheetTexts } from '$words/papers.ts';
import { jobMark } from './drawing/job-mark.ts';
import { testStrip } from './drawing/plates.ts';
import { scaleBar } from './drawing/scale-bar.ts';
import type { JobMarks } from './order.ts';
import { faces, ink, mm, sheetMargin, sheetWidth, tabular } from './paper.ts';
import { annex } from './sheet/annex.ts';
import { biteMap } from './sheet/bite-map.ts';
import { figuresTable } from './sheet/figures-table.ts';
import { glance } from './sheet/glance.ts';
import { jobStrip } from './sheet/job-strip.ts';
import { steps } from './sheet/steps.ts';
import { readings, result } from './sheet/write-down.ts';
import { typeset } from './typeset.ts';

const pageText = (page: number, pages: number): string =>
  sheetTexts.page.replace('{page}', String(page)).replace('{pages}', String(pages));

/** Number of letters from which a title is too long. */
const LONG = 36;

/** A title short enough for one line at the head of a page. */
const shortened = (title: string): string =>
  title.length > 2 * LONG ? `${title.slice(0, 2 * LONG)}…` : title;

/** Side of the QR code at the head of the sheet, with its white margin, mm. */
const MARK = 29;

function masthead({ title, piece }: JobInput, marks: JobMarks | null): Content {
  const from = piece.design ? `${sheetTexts.fromThis} ${sheetTexts.drawingStays}` : sheetTexts.fromThis;
  const name: Content[] = [
    { text: `Etchwright · ${sheetTexts.kind}`, fontSize: 10, bold: true, color: ink.accent },
    { text: typeset(title), fontSize: title.length > LONG ? 19 : 28, bold: true, lineHeight: 1 },
  ];
  if (marks === null) {
    return {
      columns: [
        { width: '*', stack: name },
        { width: 'auto', stack: [{ svg: testStrip(132, 26), margin: [10, 6, 0, 0] }] },
      ],
    };
  }
  return {
    columns: [
      {
        width: '*',
        stack: [
          ...name,
          { svg: testStrip(132, 26), margin: [0, 10, 0, 6] },
          { text: from, fontSize: 8.5, color: ink.soft, lineHeight: 0.97 },
        ],
      },
      {
        width: mm(MARK),
        stack: [
          jobMark(marks, MARK),
          { text: marks.code, bold: true, fontSize: 11, alignment: 'center', lineHeight: 1, ...tabular },
        ],
      },
    ],
  };
}

const running = (content: object): Content =>
  ({ ...content, fontSize: 8.5, color: ink.soft, font: faces.text }) as Content;

/**
 * The head of a page: on the first page the test bar that shows whether the printer kept to size, on later
 * pages the title.
 */
const headLeft = (title: string, page: number): Column =>
  page > 1
    ? { width: '*', text: typeset(shortened(title)) }
    : {
        width: '*',
        columns: [
          { width: mm(101), stack: [scaleBar()] },
          { width: '*', text: sheetTexts.bar, margin: [4, 5, 0, 0] },
        ],
      };

const header =
  (title: string) =>
  (page: number, pages: number): Content =>
    running({
      margin: [sheetMargin, page > 1 ? mm(9) : mm(7), sheetMargin, 0],
      columns: [
        headLeft(title, page),
        { width: 'auto', text: pageText(page, pages), margin: [0, page > 1 ? 0 : 5, 0, 0], ...tabular },
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

/** The job sheet: what to set, what to do, what to write down, and how every figure was computed. */
export function jobSheet(plan: Plan, marks: JobMarks | null): ContentSection {
  const { title, paper } = plan.job;
  return {
    pageMargins: [sheetMargin, mm(17), sheetMargin, mm(17)],
    header: header(title),
    footer: () => footer(plan.dataVersion),
    section: [
      masthead(plan.job, marks),
      jobStrip(plan),
      { ...(glance(plan) as object), margin: [0, 0, 0, 14] } as Content,
      ...steps(plan, sheetWidth(paper)),
      ...figuresTable(plan),
      ...biteMap(plan),
      readings(plan),
      result(plan),
      ...annex(plan),
    ],
  };
}
