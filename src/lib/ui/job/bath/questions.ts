import type { Question } from '../questions.ts';

export const bathQuestions: readonly Question[] = [];
