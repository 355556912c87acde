import type { Question } from '../questions.ts';
import Looking from './Looking.svelte';
import Running from './Running.svelte';
import Stopping from './Stopping.svelte';

export const runningQuestions: readonly Question[] = [
  { id: 'etch.running', title: 'Biting', fields: [], component: Running, action: null },
];

export const stoppingQuestions: readonly Question[] = [
  { id: 'etch.stopping', title: 'Is the supply off?', fields: [], component: Stopping, action: null },
];

export const lookingQuestions: readonly Question[] = [
  { id: 'etch.looking', title: 'Deep enough?', fields: [], component: Looking, action: null },
];
