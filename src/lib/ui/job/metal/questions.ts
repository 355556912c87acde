import { metalTexts } from '$words/metal.ts';
import type { Question } from '../questions.ts';
import Attached from './Attached.svelte';
import BareArea from './BareArea.svelte';
import Depth from './Depth.svelte';
import ShapeSize from './ShapeSize.svelte';
import WhichMetal from './WhichMetal.svelte';

const { titles } = metalTexts;

export const metalQuestions: readonly Question[] = [
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
    ],
    component: ShapeSize,
  },
  { id: 'metal.attached', title: titles.attached, fields: ['piece.attached'], component: Attached },
  { id: 'metal.depth', title: titles.depth, fields: ['piece.depth'], component: Depth },
  {
    id: 'metal.area',
    title: titles.area,
    fields: ['piece.openArea', 'piece.openShare'],
    component: BareArea,
  },
];
