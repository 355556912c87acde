/** Texts around every page: the link to help, the step rail, a new version, a page that failed. */
export const shellTexts = {
  help: 'Help',
  helpNow: 'Help now',
  noHelp: 'There is no such help page.',
  steps: 'Steps',
  states: { again: 'check again', now: 'you are here', done: 'done', later: 'later' },
  update: 'A new version is ready. Jobs stay as they are.',
  load: 'Load it',
} as const;

/** "6 of 9, check again"; `at` counts from 0. */
export const stepPlace = (at: number, count: number, again: boolean): string =>
  `${String(at + 1)} of ${String(count)}${again ? `, ${shellTexts.states.again}` : ''}`;

export const errorPage = {
  unknown: {
    tab: 'No such page',
    title: 'There is no such page',
    text: 'The address is wrong, or the page has moved.',
  },
  broken: { tab: 'Something broke', title: 'Something broke here', text: '' },
  safe: 'Your jobs are untouched. If a supply is on, switch it off first.',
  home: 'All jobs',
} as const;
