import type { Style } from 'pdfmake/interfaces';
import type { JobInput } from '../core/plan/job-input.ts';

/** Paper is measured in points, hands and knives in millimetres. */
export const mm = (length: number): number => (length * 72) / 25.4;

/** Width and height of the page, pt. */
export const pageSizes: Readonly<Record<JobInput['paper'], { width: number; height: number }>> = {
  A4: { width: mm(210), height: mm(297) },
  Letter: { width: mm(215.9), height: mm(279.4) },
};

/** Left and right margin of the job sheet, pt. */
export const sheetMargin = mm(17);

/** Width that the job sheet's content has, pt. */
export const sheetWidth = (paper: JobInput['paper']): number => pageSizes[paper].width - 2 * sheetMargin;

/**
 * Ink on paper and one accent. The signal panels alone have colours of their own, and every one of them
 * also has its word, shape and rule, because most home printers are black only.
 */
export const ink = {
  black: '#122428',
  soft: '#42545a',
  faint: '#b4c0c3',
  accent: '#0f5c5c',
  paper: '#ffffff',
  danger: '#c8102e',
  warning: '#ff8200',
  caution: '#ffd100',
  notice: '#0064b4',
  /** frame of a hazard pictogram; dark enough to survive as grey */
  frame: '#d0021b',
} as const;

/** Type faces: text in regular and bold, quiet text in light and half bold, and one for rare letters. */
export const faces = { text: 'Hyperlegible', quiet: 'HyperlegibleQuiet', rare: 'Rare' } as const;

/** Figures of one width, so that columns of numbers line up. */
export const tabular = { fontFeatures: ['tnum'] } as const satisfies Style;

/** The day the tables were released, which opens every data version: the same plan gives the same bytes. */
export const dayOf = (dataVersion: string): Date => {
  const day = /^\d{4}-\d\d-\d\d/.exec(dataVersion)?.[0];
  return new Date(day === undefined ? 0 : `${day}T00:00:00Z`);
};
