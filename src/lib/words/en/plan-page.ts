import { withUnit } from './units.ts';
import { plain } from './locale.ts';

/** Texts of the plan, as shown before anything is mixed. */
export const planTexts = {
  title: 'Your plan',
  begin: 'Begin at the bench',
  lead: (isNew: boolean): string =>
    `Nothing is ${isNew ? 'mixed' : 'opened'} yet. Print it, and come back when you like.`,
  set: 'What you will set',
  layOut: 'What to buy and lay out',
  get: 'To get, if it is not there',
  have: 'There already: lay it out',
  hours: 'When to do what',
  papers: 'Print it',
  more: 'Look closer',
  figures: 'Amps, volts, amp-hours, salt',
  madeWith: 'Your answers',
  change: 'Change',
  changes: (text: string): string => `Change: ${text}`,
  noArea:
    'The bare area is still missing: time and current depend on it. You can mix and mask, and give it then.',
} as const;

/** When each part is done, for a new bath or one from the shelf. */
export function hoursText(isNew: boolean, standHours: number, biteMinutes: number | null): readonly string[] {
  const bite =
    biteMinutes === null
      ? 'Bite, rinse and write down: in one go.'
      : `Bite: ${withUnit(plain(biteMinutes, 2), 'min')} with the current on, and looks between. Stay with it.`;
  return isNew
    ? [
        'Today: mix, label, clean and mask.',
        `Then let it stand: ${withUnit(plain(standHours, 2), 'h')} at least, or overnight.`,
        bite,
      ]
    : ['First: take the bath out, clean and mask.', bite];
}
