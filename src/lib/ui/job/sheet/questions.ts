import { sheetTexts } from '$words/sheet.ts';
import type { Question } from '../questions.ts';
import Done from './Done.svelte';

export const sheetQuestions: readonly Question[] = [
  { id: 'sheet.done', title: sheetTexts.title, fields: [], component: Done, action: null },
];
