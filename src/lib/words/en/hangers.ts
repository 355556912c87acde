import type { Hanger } from '../../core/cell/setup.ts';

/** How current reaches the piece: why this way, and how to do it. Common practice, no source. */
export const hangers = [
  {
    id: 'wire',
    label: 'Wire taped to the back',
    hint: 'Leaves no mark on the front.',
    how: 'Press a bare wire end flat on clean bare metal and tape it. Paint resist over tape and wire up to the line: what stays bare bites too.',
  },
  {
    id: 'hole',
    label: 'Hook through a hole',
    hint: 'Quick, where a hole is wanted.',
    how: 'Bend the hook from the piece’s own metal, so that nothing foreign bites. Rub hook and hole bright, then paint the hook up to the line.',
  },
  {
    id: 'tab',
    label: 'Tab or sprue, cut off later',
    hint: 'The surest contact: one metal all the way.',
    how: 'Leave the tab long enough to stand out of the liquid, so that the clip stays dry. Paint it up to the line; saw it off at the end.',
  },
  {
    id: 'rack',
    label: 'Rack for several',
    hint: 'All bite alike, if all hang alike.',
    how: 'Give each piece its own wire from one bar, all as long and as thick, so that each gets its share. Paint the wires up to the line.',
  },
] as const satisfies readonly {
  readonly id: Hanger;
  readonly label: string;
  readonly hint: string;
  readonly how: string;
}[];
