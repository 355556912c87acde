import type { Question } from '../questions.ts';
import WhichMetal from './WhichMetal.svelte';

export const metalQuestions: readonly Question[] = [
  { id: 'metal.which', title: 'What metal is the piece?', fields: ['piece.metal'], component: WhichMetal },
];
