import type { Question } from '../questions.ts';

export const electrodeQuestions: readonly Question[] = [];
