import type { Question } from '../questions.ts';

export const rinsingQuestions: readonly Question[] = [];
