import { electrodeTexts } from '$words/electrodes.ts';
import type { Question } from '../questions.ts';
import Plate from './Plate.svelte';
import TubSize from './TubSize.svelte';

const { titles } = electrodeTexts;

export const electrodeQuestions: readonly Question[] = [
  {
    id: 'electrodes.plate',
    title: titles.plate,
    fields: ['cathode.metal', 'cathode.width', 'cathode.height'],
    component: Plate,
  },
  {
    id: 'electrodes.tub',
    title: titles.tub,
    fields: ['tub.length', 'tub.width', 'tub.diameter', 'tub.fill', 'tub.waterByJug', 'cathode.gap'],
    component: TubSize,
  },
];
