import { metalTexts } from '$words/metal.ts';
import { workshopTexts } from '$words/workshop.ts';
import type { Question } from '../questions.ts';
import Workshop from '../workshop/Workshop.svelte';
import BareArea from './BareArea.svelte';
import Depth from './Depth.svelte';
import ShapeSize from './ShapeSize.svelte';
import WhichMetal from './WhichMetal.svelte';

const { titles } = metalTexts;

/** In a known workshop a job starts at the second question; Back still leads to the first. */
export const metalQuestions: readonly Question[] = [
  {
    id: 'workshop',
    title: workshopTexts.title,
    fields: ['supply.kind', 'supply.volts', 'supply.maxAmps', 'place.country', 'place.room'],
    component: Workshop,
  },
  { id: 'metal.which', title: titles.which, fields: ['piece.metal'], component: WhichMetal },
  {
    id: 'metal.size',
    title: titles.size,
    fields: [
      'piece.width',
      'piece.height',
      'piece.diameter',
      'piece.length',
      'piece.thickness',
      'piece.count',
      'piece.attached',
    ],
    component: ShapeSize,
  },
  { id: 'metal.depth', title: titles.depth, fields: ['piece.depth'], component: Depth },
  {
    id: 'metal.area',
    title: titles.area,
    fields: ['piece.openArea', 'piece.openShare'],
    component: BareArea,
  },
];
