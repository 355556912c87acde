import type { Question } from '../questions.ts';

export const sheetQuestions: readonly Question[] = [];
