import type { ContentSection, TDocumentDefinitions } from 'pdfmake/interfaces';
import type { Plan } from '../core/plan/plan.ts';
import { sheetTexts } from '$words/papers.ts';
import { language } from '$words/locale.ts';
import { cardPage } from './card-page.ts';
import { classPapers } from './class-papers.ts';
import { labelSheets } from './label-sheet.ts';
import { jobSheet } from './job-sheet.ts';
import { listPage } from './list-page.ts';
import { jobPapers } from './order.ts';
import type { PaperKind, PapersOrder, PressOrder } from './order.ts';
import { dayOf, faces, ink, pageSizes } from './paper.ts';
import { stencil } from './stencil.ts';
import { stripPage } from './strip-page.ts';
import { wearPage } from './wear-page.ts';

function sectionsOf(plan: Plan, { kinds, marks }: PapersOrder): ContentSection[] {
  const has = (kind: PaperKind): boolean => kinds.includes(kind);
  return [
    ...(has('list') ? [listPage(plan)] : []),
    ...(has('sheet') ? [jobSheet(plan, marks)] : []),
    ...(has('card') || has('label')
      ? [cardPage(plan, { card: has('card'), label: has('label'), marks })]
      : []),
    ...(has('strip') ? [stripPage(plan)] : []),
    ...(has('wear') ? [wearPage(plan)] : []),
  ];
}

/** What the file is called in a reader's title bar. */
const kindOf = ({ kinds }: PapersOrder): string =>
  kinds.includes('sheet') ? sheetTexts.kind : sheetTexts.papers;

/** The papers ordered, as one document: the job sheet first, then a page for each thing to cut out. */
export function papers(plan: Plan, order: PapersOrder = jobPapers): TDocumentDefinitions {
  return {
    pageSize: pageSizes[plan.job.paper],
    language,
    displayTitle: true,
    version: '1.7',
    info: {
      title: `${plan.job.title} · ${kindOf(order)}`,
      creator: 'Etchwright',
      producer: 'Etchwright',
      creationDate: dayOf(plan.dataVersion),
    },
    defaultStyle: { font: faces.text, fontSize: 11, color: ink.black },
    content: sectionsOf(plan, order),
  };
}

/** Whatever was ordered, as a document. */
export function documentOf(wanted: PressOrder): TDocumentDefinitions {
  if (wanted.kind === 'job') return papers(wanted.plan, wanted.order);
  if (wanted.kind === 'labels') return labelSheets(wanted.order);
  return wanted.kind === 'class' ? classPapers(wanted.order) : stencil(wanted.order);
}
