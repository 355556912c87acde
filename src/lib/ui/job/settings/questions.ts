import { knobsTexts } from '$words/knobs.ts';
import { placeTexts } from '$words/place.ts';
import { supplyTexts } from '$words/supply.ts';
import type { Question } from '../questions.ts';
import Knobs from './Knobs.svelte';
import Place from './Place.svelte';
import Supply from './Supply.svelte';

export const settingsQuestions: readonly Question[] = [
  {
    id: 'settings.supply',
    title: supplyTexts.title,
    fields: ['supply.kind', 'supply.volts', 'supply.maxAmps'],
    component: Supply,
  },
  {
    id: 'settings.place',
    title: placeTexts.title,
    fields: ['place.country', 'place.room'],
    component: Place,
  },
  { id: 'settings.knobs', title: knobsTexts.title, fields: [], component: Knobs },
];
