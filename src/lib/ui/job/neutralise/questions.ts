import { aftercareTexts } from '$words/aftercare.ts';
import { resultTexts } from '$words/result.ts';
import type { Question } from '../questions.ts';
import Result from './Result.svelte';
import Rinse from './Rinse.svelte';

export const rinsingQuestions: readonly Question[] = [
  { id: 'neutralise.rinse', title: aftercareTexts.title, fields: [], component: Rinse },
  { id: 'neutralise.result', title: resultTexts.title, fields: [], component: Result },
];
