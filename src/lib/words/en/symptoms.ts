/** Something looks wrong: what is seen, whether power goes off before anything else, and what to do then. */
export interface Symptom {
  readonly id: string;
  readonly label: string;
  /** one of its causes can hurt: stop first, find out after */
  readonly off: boolean;
  readonly act: string;
  /** only with a stainless plate, or only without one */
  readonly plate?: 'stainless' | 'other';
}

/** The gravest first. */
const symptoms: readonly Symptom[] = [
  {
    id: 'hot-clip',
    label: 'A clip or wire is hot, sparks or smells burnt',
    off: true,
    act: 'Pull the plug. Touch nothing metal till it is cold. Something touches, or a wire is too thin: mend that before any more current.',
  },
  {
    id: 'pool',
    label: 'Swimming-pool smell',
    off: true,
    act: 'That is chlorine. Switch off, leave, air the room for half an hour. Add nothing to the bath, above all no acid.',
  },
  {
    id: 'ammonia',
    label: 'Smell of ammonia',
    off: true,
    act: 'Air the room. With silver in the bath do not close, move, dry or shake it, since its crust can explode: keep people away and call your waste collection.',
  },
  {
    id: 'yellow',
    label: 'The bath turns yellow or orange',
    off: true,
    act: 'It can be chromate, a poison. Do not lift the piece. Look whether stainless steel hangs on plus. Close the jar, label it YELLOW, DO NOT TREAT, hand it over.',
  },
  {
    id: 'hot',
    label: 'The tub feels hot',
    off: true,
    act: 'Let it cool to room temperature. Go on with fewer amps or a bigger bath.',
  },
  {
    id: 'jump',
    label: 'Amps jump up',
    off: true,
    act: 'Resist is lifting, or the parts touch. Lift and look: mend the mask, or move the parts apart.',
  },
  {
    id: 'fall',
    label: 'Amps fall to almost nothing',
    off: true,
    act: 'The metal is filmed over or used up, or a clip is loose. In salt water this is when chlorine comes: air the room. Lift and look.',
  },
  {
    id: 'fizz-piece',
    label: 'It fizzes hard at the piece',
    off: true,
    act: 'Bubbles belong at the plate. The clips may be swapped, or the metal is filmed over. Follow both wires with a finger.',
  },
  {
    id: 'lift',
    label: 'Resist lifts',
    off: true,
    act: 'Rinse in the first-rinse tub, dry, mend the mask, let it harden, then go on.',
  },
  {
    id: 'no-bubbles',
    label: 'No bubbles, nothing happens',
    off: true,
    act: 'A loose clip, resist under a clip, or a knob at zero. With the supply off, look at each joint from the knob to the piece.',
  },
  {
    id: 'white',
    label: 'White or grey film on the piece',
    off: true,
    act: 'Tap water with silver, or weak salt water with copper. Rinse and brush it under water, then go on with fewer amps.',
  },
  {
    id: 'green-stainless',
    label: 'Green or blue scum',
    off: true,
    plate: 'stainless',
    act: 'Look first whether the stainless plate hangs on minus. On plus it turns the bath green, then yellow, and that is poison: touch nothing, hand the bath over. On minus it is copper: leave it till the run is over.',
  },
  {
    id: 'scum',
    label: 'Green or blue scum',
    off: false,
    plate: 'other',
    act: 'Copper salts: usual with copper and brass, and a little with sterling. Leave it till the run is over, then skim it into the waste jar with gloves on.',
  },
];

export const symptomsFor = (hasStainlessPlate: boolean): readonly Symptom[] =>
  symptoms.filter(({ plate }) => plate === undefined || (plate === 'stainless') === hasStainlessPlate);

export const symptomNamed = (id: string | null): Symptom | undefined =>
  symptoms.find((symptom) => symptom.id === id);
