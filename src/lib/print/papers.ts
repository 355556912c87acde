import type { ContentSection, TDocumentDefinitions } from 'pdfmake/interfaces';
import type { Plan } from '../core/plan/plan.ts';
import { sheetTexts } from '$words/papers.ts';
import { language } from '$words/locale.ts';
import { cardPage } from './card-page.ts';
import { classPapers } from './class-papers.ts';
import { labelSheets } from './label-sheet.ts';
import { jobSheet } from './job-sheet.ts';
import { listPage } from './list-page.ts';
import { jobPapers, paperKinds } from './order.ts';
import type { PaperKind, PapersOrder, PressOrder } from './order.ts';
import { dayOf, faces, ink, pageSizes } from './paper.ts';
import { stencil } from './stencil.ts';
import { stripPage } from './strip-page.ts';
import { wearPage } from './wear-page.ts';

type Pages = (plan: Plan, order: PapersOrder) => readonly ContentSection[];

/** The pages of each kind of paper. The type requires an entry for every kind that can be ordered. */
const pagesOf: Readonly<Record<PaperKind, Pages>> = {
  list: (plan) => [listPage(plan)],
  sheet: (plan, { marks }) => [jobSheet(plan, marks)],
  // the label is on the card's page; it has its own page only without the card
  card: (plan, { kinds, marks }) => [cardPage(plan, { card: true, label: kinds.includes('label'), marks })],
  label: (plan, { kinds, marks }) =>
    kinds.includes('card') ? [] : [cardPage(plan, { card: false, label: true, marks })],
  strip: (plan) => [stripPage(plan)],
  wear: (plan) => [wearPage(plan)],
};

const sectionsOf = (plan: Plan, order: PapersOrder): ContentSection[] =>
  paperKinds.filter((kind) => order.kinds.includes(kind)).flatMap((kind) => pagesOf[kind](plan, order));

/** The title of the file. */
const kindOf = ({ kinds }: PapersOrder): string =>
  kinds.includes('sheet') ? sheetTexts.kind : sheetTexts.papers;

/** The ordered papers as one document: the job sheet first, then a page for each cut-out. */
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

/** The document for any order. */
export function documentOf(wanted: PressOrder): TDocumentDefinitions {
  if (wanted.kind === 'job') return papers(wanted.plan, wanted.order);
  if (wanted.kind === 'labels') return labelSheets(wanted.order);
  return wanted.kind === 'class' ? classPapers(wanted.order) : stencil(wanted.order);
}
