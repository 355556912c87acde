import { storeTexts } from '$words/waste.ts';
import type { Question } from '../questions.ts';
import Store from './Store.svelte';

export const bathQuestions: readonly Question[] = [
  { id: 'bath.store', title: storeTexts.title, fields: [], component: Store, action: null },
];
