import type { Question } from '../questions.ts';

export const settingsQuestions: readonly Question[] = [];
