import type { Question } from '../questions.ts';
import Knobs from './Knobs.svelte';
import Place from './Place.svelte';
import Supply from './Supply.svelte';

export const settingsQuestions: readonly Question[] = [
  {
    id: 'settings.supply',
    title: 'What gives the current?',
    fields: ['supply.kind', 'supply.volts', 'supply.maxAmps'],
    component: Supply,
  },
  {
    id: 'settings.place',
    title: 'Where, and for whom?',
    fields: ['place.country', 'place.room'],
    component: Place,
  },
  { id: 'settings.knobs', title: 'Set the knobs', fields: [], component: Knobs },
];
