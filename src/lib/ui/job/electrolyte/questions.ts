import { electrolyteTexts } from '$words/electrolyte.ts';
import type { Question } from '../questions.ts';
import Mix from './Mix.svelte';
import type { JobSession } from '$lib/session/job-session.svelte.ts';
import Bath from './Bath.svelte';
import TopUp from './TopUp.svelte';
import Wait from './Wait.svelte';

const { titles, mixed } = electrolyteTexts;

const isNewBath = ({ draft }: JobSession): boolean => draft['bath.from'] === 'new';

export const recipeQuestions: readonly Question[] = [
  {
    id: 'electrolyte.salt',
    title: titles.salt,
    fields: ['bath.salt', 'bath.strength', 'bath.temperature'],
    component: Bath,
  },
];

export const mixingQuestions: readonly Question[] = [
  { id: 'electrolyte.mix', title: titles.mix, fields: [], component: Mix, action: mixed, when: isNewBath },
  { id: 'electrolyte.wait', title: titles.wait, fields: [], component: Wait, when: isNewBath },
  {
    id: 'electrolyte.top-up',
    title: titles.topUp,
    fields: [],
    component: TopUp,
    when: (session) => !isNewBath(session),
  },
];
