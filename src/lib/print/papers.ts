import type { TDocumentDefinitions } from 'pdfmake/interfaces';
import type { Plan } from '../core/plan/plan.ts';
import { sheetTexts } from '../words/papers.ts';
import { cardPage } from './card-page.ts';
import { jobSheet } from './job-sheet.ts';
import { faces, ink, pageSizes } from './paper.ts';

/** The day the tables were released, which opens every data version: the same plan gives the same bytes. */
const dayOf = (dataVersion: string): Date => {
  const day = /^\d{4}-\d\d-\d\d/.exec(dataVersion)?.[0];
  return new Date(day === undefined ? 0 : `${day}T00:00:00Z`);
};

/** All three papers of a plan as one document: the job sheet, then a page with bench card and bath label. */
export function papers(plan: Plan): TDocumentDefinitions {
  return {
    pageSize: pageSizes[plan.job.paper],
    language: 'en',
    displayTitle: true,
    version: '1.7',
    info: {
      title: `${plan.job.title} · ${sheetTexts.kind}`,
      creator: 'Etchwright',
      producer: 'Etchwright',
      creationDate: dayOf(plan.dataVersion),
    },
    defaultStyle: { font: faces.text, fontSize: 11, color: ink.black },
    content: [jobSheet(plan), cardPage(plan)],
  };
}
