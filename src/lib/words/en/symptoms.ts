import { anyBench, isSymptom, symptomFacts, symptomGroups, symptomsOn } from '../../core/facts/symptoms.ts';
import type { SymptomBench, SymptomGroup, SymptomId } from '../../core/facts/symptoms.ts';
import { sources } from '../../core/facts/sources.ts';
import { either, wordsFor } from './symptom-words.ts';
import type { SymptomWords } from './symptom-words.ts';

/** What looks wrong, in three parts. */
interface SymptomText {
  readonly label: string;
  readonly cause: string;
  readonly now: string;
  readonly next: string;
}

/** Headings for the three parts. */
export const symptomTexts = {
  cause: 'Likely cause',
  now: 'Now',
  next: 'Next time',
  first: 'Power off first.',
  groups: {
    grave: 'Smell, heat, danger',
    current: 'The current',
    piece: 'The piece',
    bath: 'The bath',
  } satisfies Readonly<Record<SymptomGroup, string>>,
} as const;

const weakBath = 'A bath too weak to carry the metal away as fast as it comes off.';
const hardCrust = 'Do not close, move, dry, scrape, shake or treat it: it can explode.';

/** The type demands a text for every symptom id of the facts. */
const texts: Readonly<Record<SymptomId, (words: SymptomWords) => SymptomText>> = {
  'hot-clip': ({ dead }) => ({
    label: 'A clip or wire is hot, sparks or smells burnt',
    cause: 'Two metal parts touch, a joint is loose, or a wire is too thin.',
    now: `${dead} Touch nothing metal till it is cold. Mend it before any more current.`,
    next: 'Thick leads, clean clips that grip, and clear liquid all the way between the parts.',
  }),
  pool: ({ falls, gentler, isChloride }) => ({
    label: 'It smells of a swimming pool',
    cause:
      isChloride === false
        ? 'Chlorine, which this bath should not make: table salt may have got in.'
        : 'Chlorine. Salt water gives it off when a film, or metal used up, keeps the piece from dissolving.',
    now: 'Switch off and leave. Let the room air for half an hour before you come back. Add nothing to the bath, above all no acid. A cough or a tight chest: Help, Gas.',
    next:
      isChloride === false
        ? 'Window open from the start, and the label of the salt read before it goes in.'
        : `Window open from the start. Stop as soon as ${falls}, and ${gentler}.`,
  }),
  ammonia: ({ holdsSilver, isNitrate }) => ({
    label: 'It smells of ammonia, like cleaner',
    cause: either(
      isNitrate,
      'The plate has turned nitrate into ammonia: the bath is old.',
      'This bath should make none: its salt may be another than the label says.',
      'The plate has turned nitrate into ammonia: the bath is old, or its salt another than the label says.',
    ),
    now: either(
      holdsSilver,
      `${hardCrust} Air the room, keep people away, call your waste collection.`,
      'Air the room. Add nothing to the bath. Label it and hand it over.',
      `Air the room. Add nothing. With silver in the bath: ${hardCrust.toLowerCase()} Keep people away and call your waste collection.`,
    ),
    next: 'Retire a bath by the current it has passed, before it smells. Its page under Baths counts that.',
  }),
  crust: ({ retire }) => ({
    label: 'A hard black crust, or black at the dry rim',
    cause: 'Silver and ammonia in an old nitrate bath. It can explode at a touch, even wet.',
    now: `Do not touch it. ${hardCrust} Keep people away. Call the fire service for advice.`,
    next: `Hand a silver bath over in time${retire}. Never let one dry out.`,
  }),
  yellow: () => ({
    label: 'The bath turns clear yellow or orange',
    cause: 'It can be chromate, a poison, from stainless steel, chrome or nichrome on plus.',
    now: 'Do not lift the piece, touch nothing wet. Gloves and goggles on, then cover the bath where it stands, label it YELLOW, DO NOT TREAT, and hand it over.',
    next: 'Stainless steel on minus alone, no chromed clip in the liquid. Follow both wires before power.',
  }),
  hot: ({ gentler }) => ({
    label: 'The tub feels hot',
    cause: 'More current than so little liquid can shed as heat.',
    now: 'Let it cool to room temperature, uncovered.',
    next: `Take a bigger bath, bite in parts with pauses, or ${gentler}.`,
  }),
  jump: () => ({
    label: 'The amps jump up',
    cause: 'Resist lifts, so that more metal is bare; or a clip is in the bath, or parts touch.',
    now: 'Lift and look. Mend the mask, dry the clip and hang it higher, or move the parts apart.',
    next: 'Let the resist dry its full time. Hang the clips well above the liquid.',
  }),
  fall: ({ gentler, isChloride }) => ({
    label: 'The amps fall to almost nothing',
    cause: `A film on the metal, bare metal used up, or a loose joint.${isChloride === false ? '' : ' In salt water this is when chlorine comes.'}`,
    now: 'Air the room. Lift and look: brush a film off under water, clean and tighten each joint.',
    next: `Look sooner, and ${gentler}.`,
  }),
  'no-bubbles': ({ idle }) => ({
    label: 'Nothing happens: no bubbles, no bite',
    cause: `A loose clip, resist under a clip, or ${idle}. Or the clips are swapped, and the plate is bitten instead.`,
    now: 'With the supply off, look at each joint from supply to piece. Follow both wires: the piece is on plus.',
    next: 'Bright metal under each clip. Look at the plate in the first minute: bubbles or fresh metal there show that current flows.',
  }),
  'fizz-piece': ({ gentler, isChloride }) => ({
    label: 'It fizzes hard at the piece',
    cause: `Bubbles belong at the plate. The clips are swapped, or a film makes gas of the current${isChloride === false ? '' : ': in salt water that can be chlorine'}.`,
    now: 'Air the room. Follow both wires with a finger. Rightly wired: lift the piece and brush it under water.',
    next: `Follow the wires before each start. If the film comes back, ${gentler}.`,
  }),
  trees: () => ({
    label: 'Silver grows in trees from the plate',
    cause:
      'Silver out of the bath settles on the plate and grows towards the piece. Where it arrives, it shorts.',
    now: 'Push the trees off with a plastic stick. They stay wet, in the bath.',
    next: 'A wider gap, and a look more often.',
  }),
  lift: ({ gentler }) => ({
    label: 'The resist lifts',
    cause: 'Grease under it, resist not dry, a warm bath, or too much current.',
    now: 'Rinse in the first-rinse tub, dry, mend the mask, let it dry its full time, then go on.',
    next: `Clean until water lies flat. Let the resist dry longer, and ${gentler}.`,
  }),
  uneven: () => ({
    label: 'Uneven: deeper at the edges',
    cause: 'Current crowds at edges and corners, and wherever the plate is nearer.',
    now: 'Paint resist over what is deep enough, let it dry, and bite the rest in short runs.',
    next: 'A wider gap, the plate level and straight opposite, as large as the piece. Paint the edges.',
  }),
  'film-pink': ({ isSilver }) => ({
    label: 'Pink or red film',
    cause: either(
      isSilver,
      'Copper from the alloy has settled on the silver.',
      'Zinc has left the brass before the copper.',
      'On sterling: copper from the alloy has settled. On brass: zinc has left before the copper.',
    ),
    now: 'Fine abrasive takes it off. No pickle till every trace of bath is rinsed away: with acid it can give off poison gas.',
    next: either(
      isSilver,
      'Rinse at once when the current is off. If it comes each time, the bath holds much copper: mix a new one.',
      'Brush it off under water at each look. Nothing here is known to prevent it: write down salt and strength, and compare.',
      'Rinse at once when the current is off. Brush it off under water at each look.',
    ),
  }),
  white: ({ isSilver, isBronze, gentler }) => ({
    label: 'White or grey film',
    cause: either(
      isSilver,
      'Chloride, from tap water or table salt, seals silver. So does a sulfate bath.',
      isBronze ? 'Tin of the bronze that stays behind as a grey skin.' : weakBath,
      'On silver: chloride, from tap water or table salt. On copper and brass: a bath too weak for the current. On bronze: tin that stays behind.',
    ),
    now: 'Rinse it and brush it under water, then go on.',
    next: either(
      isSilver,
      `Deionised water and a nitrate bath; ${gentler}.`,
      `As much salt as the plan says; ${gentler}.`,
      `For silver deionised water and a nitrate bath; for the others as much salt as the plan says; ${gentler}.`,
    ),
  }),
  'film-black': ({ isSilver, gentler }) => ({
    label: 'Black film or mud on the piece',
    cause: either(
      isSilver,
      'Fine silver, most likely; after chloride it is silver chloride, which darkens in light.',
      'Fine metal and oxide that the bite leaves behind.',
      'Fine metal and oxide that the bite leaves behind; on silver after chloride, silver chloride that light darkens.',
    ),
    now: either(
      isSilver,
      'Soft: keep it wet and brush it off in the first-rinse tub. Hard, or black at a dry rim: do not touch it, keep people away.',
      'Brush it off in the first-rinse tub with a soft brush. That water is kept: it holds metal.',
      'Soft: keep it wet and brush it off in the first-rinse tub. Hard, with silver in the bath: do not touch it, keep people away.',
    ),
    next: `Brush at each look, and ${gentler}.`,
  }),
  'green-stainless': () => ({
    label: 'Green or blue, the plate is stainless steel',
    cause:
      'On minus: copper from the piece, as usual. On plus: nickel and chromium from the plate, which are poison.',
    now: 'Look first on which sign the stainless plate hangs. On plus: touch nothing, hand the bath over. On minus: leave it till the run is over.',
    next: 'A plate of the piece’s own metal, or the wires followed twice.',
  }),
  scum: () => ({
    label: 'Green or blue bath or scum',
    cause: 'Copper salts: usual with copper and brass, and a little with sterling.',
    now: 'Leave it till the run is over. Then skim scum into the waste jar, with gloves on.',
    next: 'Nothing to change: colour retires no bath. The current that it has passed does.',
  }),
  brown: () => ({
    label: 'Brown or rust-orange bath',
    cause: 'Mud of copper or rust, as usual, if it sinks. What stays clear and coloured can be chromate.',
    now: 'Let a little stand in a clear glass, on white paper. Mud sinks: go on. Dye stays: close the jar, label it YELLOW, DO NOT TREAT, hand it over.',
    next: 'Let the bath settle between jobs, and pour it off its mud. The mud is kept with the bath.',
  }),
  cloudy: ({ isSilver }) => ({
    label: 'Cloudy bath',
    cause: either(
      isSilver,
      'Chloride, most often from tap water: it falls out with the silver.',
      'Metal salts that have not settled, or salt that is not dissolved.',
      'With silver: chloride, most often from tap water. Else: metal salts that have not settled, or salt not dissolved.',
    ),
    now: 'No harm by itself. Let it settle before you pour or judge the colour. A film on the piece: brush it off under water.',
    next: either(
      isSilver,
      'Deionised water, for topping up too.',
      'No grain left at the bottom before the piece hangs.',
      'Deionised water for silver. No grain left at the bottom before the piece hangs.',
    ),
  }),
  ages: ({ retire }) => ({
    label: 'Silver goes worse as the bath ages',
    cause:
      'The plate makes nitrite and ammonia of the nitrate, copper from sterling gathers, and loose silver falls in. Each makes the bite slower and rougher.',
    now: 'Smell from arm’s length and look for a hard black crust. Either one: hands off. Neither: finish this piece with more looks.',
    next: `Mix a new bath and hand this one over. A bath is retired by the current it has passed${retire}, not by its look: its page under Baths counts it.`,
  }),
};

/** A symptom, worded for one bench. */
export interface Symptom extends SymptomText {
  readonly id: SymptomId;
  readonly group: SymptomGroup;
  /** Whether the power must go off before anything else. */
  readonly off: boolean;
}

export function symptomOn(id: SymptomId, bench: SymptomBench): Symptom {
  const { group, off } = symptomFacts[id];
  return { id, group, off, ...texts[id](wordsFor(bench)) };
}

/** Name of a stored symptom; null for none, and for one that this version does not know. */
export const symptomLabel = (id: string | null): string | null =>
  id !== null && isSymptom(id) ? symptomOn(id, anyBench).label : null;

/** The symptoms that a bench can show, in groups, the most serious first. */
export const symptomsByGroup = (
  bench: SymptomBench,
): readonly { readonly group: SymptomGroup; readonly title: string; readonly list: readonly Symptom[] }[] => {
  const all = symptomsOn(bench).map((id) => symptomOn(id, bench));
  return symptomGroups.map((group) => ({
    group,
    title: symptomTexts.groups[group],
    list: all.filter((one) => one.group === group),
  }));
};

/** Titles of the sources behind the symptoms. */
export const symptomSources: readonly string[] = [
  ...new Set(Object.values(symptomFacts).map(({ source }) => sources[source].title)),
];
