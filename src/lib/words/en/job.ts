/** Texts of the page around every step of a job. */
export const jobTexts = {
  tab: (title: string, step: string, isFaulty: boolean): string =>
    `${isFaulty ? 'Error: ' : ''}${title} · ${step} · Etchwright`,
  notSaved: (why: string): string => `Not saved: ${why}. Write times down on paper.`,
  unknownFields: (fields: readonly string[]): string =>
    `A later version wrote ${fields.join(', ')} into this job. This version keeps it, and plans without it: load the new version before you rely on the plan.`,
  mixingLost:
    'The checks before mixing no longer hold, or were not made here. Choose Electrolyte above and check again.',
  parts: { plan: 'Plan', bench: 'At the bench' },
  clockOn: 'Clock on',
  goOn: 'Go on',
  forward: 'Continue',
  startsClock: 'This starts the clock. Only you can switch the supply on.',
} as const;

/** Before a job is open, or where it cannot be opened. */
export const deskTexts = {
  gone: 'There is no such job in this browser.',
  unreadable: (why: string): string =>
    `This record cannot be read (${why}). It is kept as it is; export the notebook.`,
  noStorage: (why: string): string => `No storage: ${why}. In a private window, open an ordinary one.`,
  unnamed: 'No job is named.',
  all: 'All jobs',
  otherTab: 'Another tab has this job open: here it can only be read.',
  takeOver: 'Take over here',
  opening: 'Opening the job.',
} as const;

/** For a plan that is refused. */
export const refusalPage = {
  title: 'Not this way',
  instead: 'Instead',
  change: 'Change the answer',
} as const;

/** Compares this plan with that of the job it was started from. */
export const besideTexts = {
  title: (earlier: string): string => `Beside “${earlier}”`,
  same: 'All answers are as they were then. Change what you like.',
  then: 'then',
  now: 'now',
} as const;
