import { stripTexts } from '$words/learnt.ts';
import { stoppingTexts } from '$words/run.ts';
import type { Question } from '../questions.ts';
import StripBetween from './StripBetween.svelte';
import StripRunning from './StripRunning.svelte';
import StripStopping from './StripStopping.svelte';

const alone = { fields: [], action: null } as const;

export const stripRunningQuestions: readonly Question[] = [
  { ...alone, id: 'strip.running', title: stripTexts.runningTitle, component: StripRunning },
];
export const stripStoppingQuestions: readonly Question[] = [
  { ...alone, id: 'strip.stopping', title: stoppingTexts.title, component: StripStopping },
];
export const stripBetweenQuestions: readonly Question[] = [
  { ...alone, id: 'strip.between', title: stripTexts.betweenTitle, component: StripBetween },
];
