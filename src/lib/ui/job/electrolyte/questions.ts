import { electrolyteTexts } from '$words/electrolyte.ts';
import type { Question } from '../questions.ts';
import Mix from './Mix.svelte';
import Recipe from './Recipe.svelte';
import Salt from './Salt.svelte';
import Wait from './Wait.svelte';
import WhichBath from './WhichBath.svelte';

const { titles, mixed } = electrolyteTexts;

export const recipeQuestions: readonly Question[] = [
  { id: 'electrolyte.bath', title: titles.bath, fields: [], component: WhichBath },
  { id: 'electrolyte.salt', title: titles.salt, fields: ['bath.salt'], component: Salt },
  {
    id: 'electrolyte.recipe',
    title: titles.recipe,
    fields: ['bath.strength', 'bath.temperature'],
    component: Recipe,
  },
];

export const mixingQuestions: readonly Question[] = [
  { id: 'electrolyte.mix', title: titles.mix, fields: [], component: Mix, action: mixed },
  { id: 'electrolyte.wait', title: titles.wait, fields: [], component: Wait },
];
