import type { Question } from '../questions.ts';

export const runningQuestions: readonly Question[] = [];
export const stoppingQuestions: readonly Question[] = [];
export const lookingQuestions: readonly Question[] = [];
