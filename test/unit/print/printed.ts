import { readFileSync } from 'node:fs';
import { fontFiles } from '../../../src/cli/font-files.ts';
import { parseJob } from '../../../src/lib/core/plan/job-input.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import type { Plan } from '../../../src/lib/core/plan/plan.ts';
import { jobPapers } from '../../../src/lib/print/order.ts';
import type { LabelsOrder, PapersOrder } from '../../../src/lib/print/order.ts';
import { makePapers } from '../../../src/lib/print/make-papers.ts';

/** Jobs that papers are tried with, as their files say them. */
export const examples = ['seed-head-pendant', 'wave-band-cuff', 'evening-class-tokens'] as const;

interface JobFile {
  title: string;
  piece: Record<string, unknown>;
  cathode: Record<string, unknown>;
  bath: Record<string, unknown>;
  resist: { kind: string };
  supply: Record<string, unknown>;
  [other: string]: unknown;
}

const readJob = (name: string): JobFile =>
  JSON.parse(
    readFileSync(new URL(`../../../static/examples/${name}.json`, import.meta.url), 'utf8'),
  ) as JobFile;

/** An example's plan, after `change` has altered its job file. */
export function planOf(name: string, change: (job: JobFile) => void = () => undefined): Plan {
  const job = readJob(name);
  change(job);
  const parsed = parseJob(job);
  if ('faults' in parsed) throw new Error(JSON.stringify(parsed.faults));
  return planJob(parsed.job);
}

/** Every pairing of metal, salt and resist that is planned: whatever a paper may have to say. */
export function everyPlan(): Plan[] {
  const metals = ['fine-silver-999', 'sterling-925', 'C11000', 'C26000', 'C36000', 'C75200'];
  const salts = ['NaNO3', 'KNO3', 'NaCl', 'CuSO4', 'CuSO4.5H2O', 'Na2SO4', 'Na2SO4.10H2O'];
  const resists = ['nail-varnish', 'paint-pen', 'permanent-marker', 'vinyl', 'toner', 'dry-film'];
  return metals.flatMap((metal, m) =>
    salts.flatMap((salt, s) => {
      const plan = planOf('seed-head-pendant', (job) => {
        job.piece['metal'] = metal;
        job.cathode['metal'] = s % 2 === 0 ? 'stainless' : metal;
        job.bath['salt'] = salt;
        job.bath['water'] = s % 3 === 0 ? 'tap' : 'rain';
        job.resist.kind = resists[(m + s) % resists.length] ?? 'vinyl';
        if (s % 2 === 1) job.supply = { ...job.supply, kind: 'adapter' };
      });
      return plan.refusals.length > 0 ? [] : [plan];
    }),
  );
}

/** A piece of text as it lies on the page: mm from the page's upper left corner to its left end of baseline. */
export interface Placed {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** type size, pt */
  readonly size: number;
}

export interface Page {
  readonly width: number;
  readonly height: number;
  readonly items: readonly Placed[];
  /** all text without any space: how a line was broken says nothing */
  readonly squeezed: string;
}

export const squeeze = (text: string): string => text.replace(/\s+/g, '');

/** Reads a PDF back, as a reader's own program would. */
export async function readPages(bytes: Uint8Array): Promise<Page[]> {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const pdf = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: Page[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const placed = items.flatMap((item): Placed[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [, , , size, x, y] = item.transform as number[];
      const mm = 25.4 / 72;
      return [
        {
          text: item.str,
          x: (x ?? 0) * mm,
          y: (height - (y ?? 0)) * mm,
          width: item.width * mm,
          size: size ?? 0,
        },
      ];
    });
    pages.push({ width, height, items: placed, squeezed: squeeze(placed.map(({ text }) => text).join('')) });
  }
  return pages;
}

export const print = (plan: Plan, order: PapersOrder = jobPapers): Promise<Uint8Array> =>
  makePapers({ kind: 'job', plan, order }, fontFiles());

/** Sheets of labels, printed. */
export const printLabels = (order: LabelsOrder): Promise<Uint8Array> =>
  makePapers({ kind: 'labels', order }, fontFiles());
