import { lookTexts } from '$words/look.ts';
import { resumingTexts, runTexts, stoppingTexts } from '$words/run.ts';
import type { Question } from '../questions.ts';
import Looking from './Looking.svelte';
import Running from './Running.svelte';
import Resuming from './Resuming.svelte';
import Stopping from './Stopping.svelte';

const alone = { fields: [], action: null } as const;

export const runningQuestions: readonly Question[] = [
  { ...alone, id: 'etch.running', title: runTexts.title, component: Running },
];
export const resumingQuestions: readonly Question[] = [
  { ...alone, id: 'etch.resuming', title: resumingTexts.title, component: Resuming },
];
export const stoppingQuestions: readonly Question[] = [
  { ...alone, id: 'etch.stopping', title: stoppingTexts.title, component: Stopping },
];
export const lookingQuestions: readonly Question[] = [
  { ...alone, id: 'etch.looking', title: lookTexts.title, component: Looking },
];
