import type { Question } from '../questions.ts';
import Hanger from './Hanger.svelte';
import Plate from './Plate.svelte';
import TubSize from './TubSize.svelte';

export const electrodeQuestions: readonly Question[] = [
  { id: 'electrodes.hanger', title: 'How does current reach the piece?', fields: [], component: Hanger },
  {
    id: 'electrodes.plate',
    title: 'What hangs opposite?',
    fields: ['cathode.metal', 'cathode.width', 'cathode.height'],
    component: Plate,
  },
  {
    id: 'electrodes.tub',
    title: 'What do they hang in?',
    fields: ['tub.length', 'tub.width', 'tub.diameter', 'tub.fill', 'tub.waterByJug', 'cathode.gap'],
    component: TubSize,
  },
];
