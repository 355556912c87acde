import { storedText } from './stored-text.ts';

/** Questions about a finished piece, judged by eye, and their possible answers. The ids are stored. */
export const findings = [
  {
    id: 'edge',
    legend: 'Edges of the drawing',
    answers: { crisp: 'Crisp', wavy: 'Wavy', broken: 'Broken, or eaten under' },
  },
  {
    id: 'texture',
    legend: 'Surface of the bite',
    answers: { smooth: 'Smooth and matt', grainy: 'Grainy', pitted: 'Pitted', streaked: 'Streaked' },
  },
  {
    id: 'resist',
    legend: 'The mask',
    answers: { held: 'Held to the end', edges: 'Lifted at its edges', holes: 'Let the bath through' },
  },
  {
    id: 'sludge',
    legend: 'Sludge in the bath',
    answers: { none: 'None', some: 'A little', much: 'A layer on the floor or the plate' },
  },
] as const;

/** Asked only where nothing was measured or weighed. */
export const looks = {
  id: 'depth',
  legend: 'No gauge, no scale? By eye it is',
  hint: 'Counts a tenth of a job. Weighing before and after, or a witness tab snapped through, counts for more.',
  answers: { shallower: 'Shallower than wanted', wanted: 'As wanted', deeper: 'Deeper than wanted' },
} as const;

export const depthWays = {
  legend: 'Measured with',
  answers: { gauge: 'A gauge on the piece', tab: 'A witness tab, snapped through' },
} as const;

export const findingTexts = {
  title: 'How it came out',
  hint: 'Answer what you like. You see it again beside the next job of this kind.',
} as const;

/** The answers in words, one line for each answered question. */
export function findingLines(
  seen: Readonly<Record<string, string>>,
): readonly { readonly name: string; readonly text: string }[] {
  return [...findings, { ...looks, legend: 'By eye' }].flatMap(({ id, legend, answers }) => {
    const answer = seen[id];
    return answer === undefined || answer === ''
      ? []
      : [{ name: legend, text: storedText<string>(answers, answer) }];
  });
}

export const photoTexts = {
  masked: { title: 'Masked', add: 'Add a picture of the mask' },
  stripped: { title: 'Stripped', add: 'Add a picture, mask off' },
  finished: { title: 'Finished', add: 'Add a picture of the finished piece' },
  hint: 'Beside a ruler, if you can. It stays on this device; where it was taken is not kept.',
  remove: 'Remove',
  picture: (shows: string, n: number): string => `${shows}, picture ${String(n + 1)}`,
  removeOne: (picture: string): string => `Remove: ${picture}`,
  back: 'Put back',
  gone: 'The picture is not here: it was lost, or its file was left out.',
  notAPicture: 'Not taken: this browser opens no picture from that file. Use a JPEG, PNG or WebP.',
  noRoom: (why: string): string =>
    `The picture was not kept (${why}). Everything you typed is. Save the notebook as a file and free some space.`,
} as const;
