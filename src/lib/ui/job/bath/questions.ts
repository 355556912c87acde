import type { Question } from '../questions.ts';
import Store from './Store.svelte';

export const bathQuestions: readonly Question[] = [
  { id: 'bath.store', title: 'Keep the bath, or hand it over?', fields: [], component: Store, action: null },
];
