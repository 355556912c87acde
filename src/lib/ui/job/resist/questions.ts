import type { Question } from '../questions.ts';

export const resistQuestions: readonly Question[] = [];
