import type { Question } from '../questions.ts';
import StripBetween from './StripBetween.svelte';
import StripRunning from './StripRunning.svelte';
import StripStopping from './StripStopping.svelte';

const alone = { fields: [], action: null } as const;

export const stripRunningQuestions: readonly Question[] = [
  { ...alone, id: 'strip.running', title: 'The test strip bites', component: StripRunning },
];
export const stripStoppingQuestions: readonly Question[] = [
  { ...alone, id: 'strip.stopping', title: 'Is the supply off?', component: StripStopping },
];
export const stripBetweenQuestions: readonly Question[] = [
  { ...alone, id: 'strip.between', title: 'Stop a window out', component: StripBetween },
];
