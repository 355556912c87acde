import type { Question } from '../questions.ts';

export const recipeQuestions: readonly Question[] = [];
export const mixingQuestions: readonly Question[] = [];
