/** Something looks wrong: what is seen, whether power goes off first, and what to do. */
export const symptoms = [
  {
    id: 'hot',
    label: 'The tub feels hot',
    off: true,
    act: 'Let it cool to room temperature. Go on with fewer amps or a bigger bath.',
  },
  {
    id: 'pool',
    label: 'Swimming-pool smell',
    off: true,
    act: 'That is chlorine. Leave and air the room for half an hour. Add nothing, above all no acid.',
  },
  {
    id: 'ammonia',
    label: 'Smell of ammonia',
    off: true,
    act: 'Air the room. With silver in the bath do not close, dry or shake it: call your waste collection.',
  },
  {
    id: 'yellow',
    label: 'The bath turns yellow',
    off: true,
    act: 'It can be chromate, a poison. Check that no stainless steel is on plus. Close the jar, label it YELLOW, DO NOT TREAT, hand it over.',
  },
  {
    id: 'jump',
    label: 'Amps jump up',
    off: true,
    act: 'Resist is lifting, or the parts touch. Lift, look, mend the mask, move them apart.',
  },
  {
    id: 'fall',
    label: 'Amps fall away',
    off: true,
    act: 'The metal is filmed over or used up, or a clip is loose. In salt water this is when chlorine comes. Lift and look.',
  },
  {
    id: 'lift',
    label: 'Resist lifts',
    off: true,
    act: 'Rinse in the first-rinse tub, dry, mend the mask, let it harden, go on.',
  },
  {
    id: 'fizz-piece',
    label: 'It fizzes hard at the piece',
    off: true,
    act: 'The clips may be swapped, or the metal is filmed over. Follow both wires. Bubbles belong at the plate.',
  },
  {
    id: 'no-bubbles',
    label: 'No bubbles, nothing happens',
    off: false,
    act: 'Look at the meter: no amps means a loose clip or resist under it. Switch off before you touch a clip.',
  },
  {
    id: 'scum',
    label: 'Green or blue scum',
    off: false,
    act: 'Copper salts: usual with copper and brass. Skim it into the waste jar with gloves on, after the run.',
  },
  {
    id: 'white',
    label: 'White film on the piece',
    off: false,
    act: 'Weak salt water on copper, or tap water with silver. Stop for a look, rinse, go on with fewer amps.',
  },
] as const;
