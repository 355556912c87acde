/** What is asked once: what there is to work with. */
export const workshopTexts = {
  title: 'Your workshop',
  lead: 'Asked once. Everything after this is said for what you have; change it whenever something new stands there.',
  current: 'What gives the current?',
  place: 'Where, and for whom?',
  weighs: 'What do you weigh with?',
  change: 'Change the workshop',
  nothing: 'I have none yet',
  get: 'Get a bench supply with knobs for volts and amps, 0 to 30 V and 3 A or more, sealed from the mains. With its ammeter the time comes out about four times surer than without.',
} as const;
