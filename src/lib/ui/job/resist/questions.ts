import { resistTexts } from '$words/resist.ts';
import type { Question } from '../questions.ts';
import Clean from './Clean.svelte';
import Mask from './Mask.svelte';
import NowBare from './NowBare.svelte';
import WhichResist from './WhichResist.svelte';

const { titles } = resistTexts;

export const resistQuestions: readonly Question[] = [
  { id: 'resist.kind', title: titles.kind, fields: [], component: WhichResist },
];

export const maskingQuestions: readonly Question[] = [
  { id: 'resist.clean', title: titles.clean, fields: [], component: Clean },
  { id: 'resist.mask', title: titles.mask, fields: [], component: Mask },
  {
    id: 'resist.area',
    title: titles.area,
    fields: ['piece.openArea', 'piece.openShare'],
    component: NowBare,
    // Do not ask again for what the plan already knows.
    when: ({ draft, record }) => draft['piece.area'] === 'later' || record.at === 'resist.area',
  },
];
