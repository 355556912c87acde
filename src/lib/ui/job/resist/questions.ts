import type { Question } from '../questions.ts';
import Clean from './Clean.svelte';
import Mask from './Mask.svelte';
import NowBare from './NowBare.svelte';
import WhichResist from './WhichResist.svelte';

export const resistQuestions: readonly Question[] = [
  { id: 'resist.kind', title: 'What keeps the bath off?', fields: [], component: WhichResist },
  { id: 'resist.clean', title: 'Clean it until water lies flat', fields: [], component: Clean },
  { id: 'resist.mask', title: 'Mask it', fields: [], component: Mask },
  {
    id: 'resist.area',
    title: 'How much is bare now?',
    fields: ['piece.openArea', 'piece.openShare'],
    component: NowBare,
  },
];
