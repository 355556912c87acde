import type { Question } from '../questions.ts';
import Attached from './Attached.svelte';
import BareArea from './BareArea.svelte';
import Depth from './Depth.svelte';
import ShapeSize from './ShapeSize.svelte';
import WhichMetal from './WhichMetal.svelte';

export const metalQuestions: readonly Question[] = [
  { id: 'metal.which', title: 'What metal is the piece?', fields: ['piece.metal'], component: WhichMetal },
  {
    id: 'metal.size',
    title: 'How big is it?',
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
  { id: 'metal.attached', title: 'Is anything on it?', fields: ['piece.attached'], component: Attached },
  { id: 'metal.depth', title: 'How deep shall it bite?', fields: ['piece.depth'], component: Depth },
  {
    id: 'metal.area',
    title: 'How much of the face stays bare?',
    fields: ['piece.openArea', 'piece.openShare'],
    component: BareArea,
  },
];
