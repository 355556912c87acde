import type { Question } from '../questions.ts';
import Done from './Done.svelte';

export const sheetQuestions: readonly Question[] = [
  { id: 'sheet.done', title: 'What was done', fields: [], component: Done, action: null },
];
