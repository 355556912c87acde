import { knobsTexts } from '$words/knobs.ts';
import { planTexts } from '$words/plan-page.ts';
import type { Question } from '../questions.ts';
import Knobs from './Knobs.svelte';
import PlanReady from './PlanReady.svelte';

export const planQuestions: readonly Question[] = [
  {
    id: 'settings.plan',
    title: planTexts.title,
    fields: [],
    component: PlanReady,
    action: planTexts.begin,
  },
];

export const knobsQuestions: readonly Question[] = [
  { id: 'settings.knobs', title: knobsTexts.title, fields: [], component: Knobs },
];
