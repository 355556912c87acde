import type { Question } from '../questions.ts';
import Mix from './Mix.svelte';
import Recipe from './Recipe.svelte';
import Salt from './Salt.svelte';
import Wait from './Wait.svelte';
import WhichBath from './WhichBath.svelte';

export const recipeQuestions: readonly Question[] = [
  { id: 'electrolyte.bath', title: 'A new bath, or one from the shelf?', fields: [], component: WhichBath },
  { id: 'electrolyte.salt', title: 'Which salt?', fields: ['bath.salt'], component: Salt },
  {
    id: 'electrolyte.recipe',
    title: 'How much salt for this tub?',
    fields: ['bath.strength', 'bath.temperature'],
    component: Recipe,
  },
];

export const mixingQuestions: readonly Question[] = [
  {
    id: 'electrolyte.mix',
    title: 'Mix, in this order',
    fields: [],
    component: Mix,
    action: 'Mixed and labelled',
  },
  { id: 'electrolyte.wait', title: 'Let it stand', fields: [], component: Wait },
];
