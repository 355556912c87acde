import type { Question } from '../questions.ts';
import Result from './Result.svelte';
import Rinse from './Rinse.svelte';

export const rinsingQuestions: readonly Question[] = [
  { id: 'neutralise.rinse', title: 'Rinse, strip, dry', fields: [], component: Rinse },
  { id: 'neutralise.result', title: 'What did you get?', fields: [], component: Result },
];
