import { barText } from './units.ts';

/** Texts of the list of papers on screen. */
export const paperNames = {
  list: { label: 'List', hint: 'what to buy and lay out' },
  sheet: { label: 'Job sheet', hint: 'every step, figure and source' },
  card: { label: 'Bench card', hint: 'what to set and what to look at; laminate it' },
  label: { label: 'Bath label', hint: 'for the jar' },
  strip: { label: 'First aid', hint: 'to hang by the bench' },
  wear: { label: 'What to wear', hint: 'for this salt, bath and remover' },
} as const;

export const paperSizes = [
  { value: 'A4', label: 'A4' },
  { value: 'Letter', label: 'US Letter' },
] as const;

export const panelTexts = {
  title: 'Papers',
  which: 'Which papers?',
  paper: 'Paper in your printer',
  make: 'Make the papers',
  making: 'Making the papers',
  ready: 'The papers are ready.',
  open: 'Open to print',
  save: 'Save the file',
  share: 'Share',
  none: (why: string): string => `No papers: ${why}`,
  noPreview: 'This browser shows no preview. Open the file instead.',
  page: (title: string, page: number): string => `${title}, page ${String(page)}`,
  scale: `Print at 100 %, not “fit to page”. The bar on each paper must measure ${barText}.`,
} as const;
