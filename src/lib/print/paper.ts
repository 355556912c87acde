import type { Style } from 'pdfmake/interfaces';
import type { JobInput } from '../core/plan/job-input.ts';

/** Millimetres to points: pages are measured in points, but cut-outs are used in millimetres. */
export const mm = (length: number): number => (length * 72) / 25.4;

/** Width and height of the page, pt. */
export const pageSizes: Readonly<Record<JobInput['paper'], { width: number; height: number }>> = {
  A4: { width: mm(210), height: mm(297) },
  Letter: { width: mm(215.9), height: mm(279.4) },
};

/** Left and right margin of the job sheet, pt. */
export const sheetMargin = mm(17);

/** Width of the job sheet's content, pt. */
export const sheetWidth = (paper: JobInput['paper']): number => pageSizes[paper].width - 2 * sheetMargin;

/**
 * Black ink and one accent colour. Only signal panels have more colours, and each of them also has its word,
 * shape and line width, because most home printers print only black.
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
  /** frame of a hazard pictogram, dark enough to show in grey */
  frame: '#d0021b',
} as const;

/** Fonts: text in regular and bold, secondary text in light and semibold, and one for rare letters. */
export const faces = { text: 'Hyperlegible', quiet: 'HyperlegibleQuiet', rare: 'Rare' } as const;

/** Digits of equal width, so that columns of numbers line up. */
export const tabular = { fontFeatures: ['tnum'] } as const satisfies Style;

/**
 * The release date of the tables, at the beginning of the data version. It is the date in the file, so that
 * the same plan gives the same bytes.
 */
export const dayOf = (dataVersion: string): Date => {
  const day = /^\d{4}-\d\d-\d\d/.exec(dataVersion)?.[0];
  return new Date(day === undefined ? 0 : `${day}T00:00:00Z`);
};
