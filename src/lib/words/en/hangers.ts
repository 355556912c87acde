import type { Hanger } from '../../core/cell/setup.ts';

/**
 * Ways to connect the piece to the current, with the reason for each; the instructions say how. Common
 * practice, no source.
 */
export const hangers = [
  {
    id: 'wire',
    label: 'Wire taped to the back',
    hint: 'Leaves no mark on the front.',
  },
  {
    id: 'hole',
    label: 'Hook through a hole',
    hint: 'Quick, where a hole is wanted.',
  },
  {
    id: 'tab',
    label: 'Tab or sprue, cut off later',
    hint: 'The surest contact: one metal all the way.',
  },
  {
    id: 'rack',
    label: 'Rack for several',
    hint: 'All bite alike, if all hang alike.',
  },
] as const satisfies readonly {
  readonly id: Hanger;
  readonly label: string;
  readonly hint: string;
}[];
