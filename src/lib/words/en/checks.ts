import { limits, practice } from '../../core/facts/limits.ts';
import type { UnitId } from '../../core/units/convert.ts';
import type { CheckId, HoldId, OptionId, WrongId } from '../../procedure/checks.ts';
import { datumText, withUnit } from './units.ts';

/** A check in words: the question, what can be seen, and what to do about each wrong answer. */
interface CheckText<Id extends CheckId> {
  readonly asks: string;
  /** Left out where nothing is chosen. */
  readonly options: Readonly<Record<OptionId<Id>, string>>;
  /** The id `number` is for a reading out of range. */
  readonly fixes: Readonly<Record<WrongId<Id>, string>>;
  /** What a right but unusual answer means. */
  readonly means?: Readonly<Partial<Record<OptionId<Id>, string>>>;
}

export const holdTexts: Readonly<Record<HoldId, { readonly title: string; readonly lead: string }>> = {
  mixing: { title: 'Stop and look: before mixing', lead: 'Look, and say what you see.' },
  power: {
    title: 'Stop and look: before power',
    lead: 'Supply off. Look, and say what you see.',
  },
  lifting: { title: 'Stop and look: before lifting', lead: 'Look first, then put your hands near.' },
  storing: { title: 'Stop and look: before storing', lead: 'Smell from arm’s length, then look.' },
};

/** How many checks of a hold are left. */
export const holdLeft = (left: number): string => (left === 0 ? 'All seen.' : `${String(left)} to look at.`);

/** State of the answer, shown beside each check. */
export const freshnessTexts = {
  fresh: 'seen',
  wrong: 'put it right',
  changed: 'check again',
  old: `check again: ${datumText(practice.answerHolds)} have passed`,
  spent: 'look again: the current has been off',
  unanswered: '',
} as const;

/** For a check that is read from a scale. */
export const readingChecks = {
  say: 'That is what I read',
  said: (value: number, unit: UnitId): string => `You read ${withUnit(String(value), unit)}.`,
} as const;

const putOnGloves = 'Take whole nitrile gloves. Blow one up and look for leaks; change torn ones.';
const putOnGoggles = 'Put splash goggles over your eyes now. Glasses leave the sides open.';

const twoHaveSeen: CheckText<Extract<CheckId, `initials-${string}`>> = {
  asks: 'Two have seen the marked checks',
  options: {},
  fixes: { initials: 'Two people, each their own: one to four letters, and not the same.' },
};

/** Whose initials they are, in the order asked. */
export const initialsTexts = {
  adult: 'Adult in charge',
  other: 'Who looked with them',
  say: 'We have both seen it',
  said: (value: string): string => `Seen by ${value.replace(' ', ' and ')}.`,
} as const;

/** The type demands words for every check, option and wrong answer: without them it does not compile. */
export const checkTexts: { readonly [Id in CheckId]: CheckText<Id> } = {
  'goggles-for-salt': {
    asks: 'Your goggles are',
    options: { 'on-eyes': 'over my eyes', 'on-bench': 'on the bench', none: 'I have none' },
    fixes: {
      'on-bench': putOnGoggles,
      none: 'No goggles, no mixing. Splash goggles cost little; dust and drops in an eye do not.',
    },
  },
  'gloves-for-salt': {
    asks: 'Your gloves are',
    options: { 'on-whole': 'on, whole', torn: 'torn or wet inside', off: 'off' },
    fixes: { torn: putOnGloves, off: putOnGloves },
  },
  'jar-says': {
    asks: 'The jar’s label says',
    options: { 'this-salt': '{salt}', 'other-salt': 'something else', 'no-label': 'nothing to read' },
    fixes: {
      'other-salt':
        'Do not use it. The wrong salt can ruin silver or give off poison. Go back and choose the salt you have.',
      'no-label': 'Do not use a jar you cannot name. Buy salt with a label on it.',
    },
  },
  'tub-holds': {
    asks: 'The tub is',
    options: {
      clean: 'clean: empty, or water alone',
      'something-else': 'not clean, or holds something else',
    },
    fixes: {
      'something-else': 'Empty it into its own labelled jar, never a drain. Rinse the tub before you go on.',
    },
  },
  'under-tub': {
    asks: 'Under the tub there is',
    options: { tray: 'a tray with a rim', table: 'the bare table' },
    fixes: { table: 'Put a tray with a rim under everything. It holds a spill.' },
  },
  'food-flame-children': {
    asks: 'Food, flames, children and pets are',
    options: { away: 'not here', near: 'near' },
    fixes: { near: 'Clear the place first: food out, flames out, door shut.' },
  },
  rim: {
    asks: 'Before you touch the lid: around its rim and thread you see',
    options: { clean: 'nothing, or white salt', crust: 'a black or dark crust', 'not-sure': 'not sure' },
    fixes: {
      crust:
        'Do not open, move, shake or treat it: a black crust of old silver can explode. Keep people away. Call the fire service for advice.',
      'not-sure': 'Look with a light, without touching. Still not sure: leave it closed and mix a new bath.',
    },
  },
  'bath-smell': {
    asks: 'Open it at arm’s length. It smells of',
    options: {
      nothing: 'nothing',
      ammonia: 'ammonia, like cleaner',
      pool: 'a swimming pool',
    },
    fixes: {
      ammonia:
        'Lay the lid back loosely. Do not dry, shake or treat it. Air the room, keep people away, and call your waste collection.',
      pool: 'That is chlorine. Leave, air the room for half an hour, come back and smell again. Add no acid.',
    },
  },
  'bath-is': {
    asks: 'The jar from the shelf',
    options: {
      'the-one': 'carries the label named in the job',
      another: 'is another bath, or has no label',
    },
    fixes: {
      another: 'Put it back. Metals and salts must not be mixed. Take the one named in the job.',
    },
  },
  dressed: {
    asks: 'On you',
    options: {
      ready: 'goggles over my eyes, rings and watch off',
      'goggles-off': 'no goggles yet',
      ring: 'a ring, watch or bracelet',
    },
    fixes: {
      'goggles-off': putOnGoggles,
      ring: 'Take it off. A ring across the two leads grows hot enough to burn at once.',
    },
  },
  air: {
    asks: 'The gas can leave',
    options: {
      open: 'window open, tub uncovered',
      outdoors: 'outdoors, tub uncovered',
      closed: 'window closed',
      covered: 'tub covered',
    },
    fixes: {
      closed: 'Open it. The gas must be able to leave.',
      covered: 'Take the cover off. Hydrogen under a lid can burn.',
    },
  },
  'supply-stands': {
    asks: 'The supply stands',
    options: {
      beside: 'beside the tub, higher, leads in a loop',
      above: 'over the tub',
      'lead-drips': 'lower, or a lead straight down',
    },
    fixes: {
      above: 'Move it to the side. What falls into a bath takes the mains with it.',
      'lead-drips':
        'Raise the supply above the tub’s rim. Let each lead hang in a loop below its socket: drops then fall off before they reach it.',
    },
  },
  fuse: {
    asks: 'The battery’s fuse is',
    options: {
      'in-plus': 'in the plus lead',
      'small-block': 'not needed: a small block battery',
      none: 'missing',
    },
    fixes: {
      none: 'Fit one close to its plus pole, no larger than the amps planned need. Without it a short turns the leads red hot.',
    },
  },
  'supply-label': {
    asks: 'The supply’s own label says',
    options: {
      'as-planned': 'DC, and the volts of this plan',
      more: 'AC, or other volts',
      'cannot-read': 'nothing I can read',
    },
    fixes: {
      more: 'Do not connect it. Go back to the workshop and name the supply you have.',
      'cannot-read': 'A supply nobody can name is not used. Take one with a label.',
    },
  },
  'volts-knob': {
    asks: 'The volts knob reads',
    options: {},
    fixes: {
      number: `Turn the volts down to what the plan says before you go on. ${datumText(limits.refusedVolts)} and more are never used.`,
    },
  },
  'amps-knob': {
    asks: 'The amps knob reads',
    options: {},
    fixes: {
      number: 'Turn the amps down to what the plan says before you go on.',
    },
  },
  between: {
    asks: 'Between piece and plate you see',
    options: {
      'clear-dry': 'clear liquid, both clips dry above it',
      touching: 'something touching or bridging',
      'clip-wet': 'a clip in or at the liquid',
    },
    fixes: {
      touching: 'Move them apart until clear liquid shows all the way. A bridge is a short circuit.',
      'clip-wet': 'Lift it clear. A wet clip dissolves and spoils the bath.',
    },
  },
  'meter-sign': {
    asks: 'Clips apart, your meter’s red tip on the piece’s clip: it showed',
    options: {
      'no-minus': 'volts without a minus sign',
      minus: 'a minus sign',
      'not-sure': 'nothing, or I have not looked',
      'not-here': 'the meter is not here today',
    },
    fixes: {
      minus: 'Supply off. Swap the two leads at the supply, and measure again before a clip touches metal.',
      'not-sure':
        'Goggles on, clips off the metal and away from the tub. Meter at DC volts: red tip on the clip meant for the piece. Supply on, read, supply off.',
    },
  },
  'piece-clip': {
    asks: 'Last: follow the wire from your piece, finger along it. It ends at',
    options: { plus: 'plus, +', minus: 'minus, −', 'not-sure': 'not sure' },
    fixes: {
      minus: 'Swap the two clips at the supply. On minus the piece grows rough and the plate dissolves.',
      'not-sure': 'Go slowly from the metal to the socket again, and read the sign printed there.',
    },
  },
  hands: {
    asks: 'In your hands',
    options: {
      'gloves-tongs': 'whole gloves on, plastic tongs ready',
      fingers: 'no tongs, or no gloves',
      torn: 'a torn or wet glove',
    },
    fixes: {
      fingers: 'Put on whole gloves, take plastic tongs. Fingers stay out of the bath.',
      torn: putOnGloves,
    },
  },
  colour: {
    asks: 'The liquid is',
    options: {
      'clear-blue-green': 'clear, blue, green or cloudy',
      'brown-orange': 'muddy brown or rust-orange: it settles',
      yellow: 'clear yellow or orange, like dye',
      'not-sure': 'not sure',
    },
    fixes: {
      yellow:
        'Clear yellow can be chromate, a poison. Touch nothing without gloves, close the jar, label it YELLOW, DO NOT TREAT, and hand it over.',
      'not-sure':
        'Let a little stand in a clear glass, on white paper, until it is still. Mud settles and is rust or copper; dye stays.',
    },
    means: {
      'brown-orange':
        'Copper or rust: usual, and no fault. Let it settle before you pour; the mud is kept with the bath.',
    },
  },
  crust: {
    asks: 'On plate and walls you see',
    options: {
      'grey-or-none': 'grey moss, or nothing',
      'black-soft': 'soft black dust or mud, under the liquid',
      'black-hard': 'a hard black crust, or black at the dry rim',
    },
    fixes: {
      'black-hard':
        'Do not close, dry, scrape, shake or treat it: it can explode. Keep people away. Call the fire service for advice.',
    },
    means: {
      'black-soft':
        'Fine silver, most likely. Leave it wet in the bath: never scrape, dry or heat it. A smell of ammonia later: hands off, and call your waste collection.',
    },
  },
  'mask-holds': {
    asks: 'The resist is',
    options: { whole: 'whole: back, edges and hanger too', gaps: 'open somewhere it should not be' },
    fixes: { gaps: 'Dry the spot, touch it up, let it harden. Go back to the resist step if you need to.' },
  },
  'goggles-lifting': {
    asks: 'Your goggles are still',
    options: { 'on-eyes': 'over my eyes', off: 'off' },
    fixes: { off: putOnGoggles },
  },
  'first-rinse': {
    asks: 'The first-rinse tub is',
    options: { 'filled-beside': 'filled, beside the bath', 'not-yet': 'not there yet' },
    fixes: {
      'not-yet': 'Fill a tub with water and set it beside the bath. That water is kept, not poured away.',
    },
  },
  'flame-near': {
    asks: 'Flames, torch, heater near by',
    options: { none: 'none', some: 'one is on' },
    fixes: { some: 'Put it out. Solvent takes the resist off next, and its vapour burns.' },
  },
  smell: {
    asks: 'The bath smells of',
    options: { nothing: 'nothing', ammonia: 'ammonia, like cleaner', pool: 'a swimming pool' },
    fixes: {
      ammonia:
        'Do not close, dry, shake or treat it. Air the room, keep people away. Call your waste collection.',
      pool: 'That is chlorine. Leave, air the room for half an hour, come back and smell again. Add no acid.',
    },
  },
  'label-says': {
    asks: 'The jar’s label names',
    options: {
      'this-bath': 'this bath and its metal',
      another: 'something else',
      'no-label': 'nothing: no label',
    },
    fixes: {
      another: 'Take the right jar, or a new label. One metal group in one jar.',
      'no-label': 'Label it before it is left alone.',
    },
  },
  container: {
    asks: 'The jar once held',
    options: { 'not-food': 'no food or drink', food: 'food or drink' },
    fixes: { food: 'Take another. A bath in a drink bottle has been drunk before.' },
  },
  'initials-mixing': twoHaveSeen,
  'initials-power': {
    ...twoHaveSeen,
    asks: 'An adult has a hand on the supply, and two have seen the marked checks',
  },
  'initials-lifting': twoHaveSeen,
  'initials-storing': twoHaveSeen,
};

/** The text of an option of a check, with a blank for the salt. */
export const optionText = <Id extends CheckId>(check: Id, option: OptionId<Id>): string =>
  checkTexts[check].options[option];

/**
 * What to do about an answer; undefined for one without a fix.
 * @param answer may come from storage
 */
export function fixText(check: CheckId, answer: string): string | undefined {
  const fixes: Readonly<Partial<Record<WrongId<CheckId>, string>>> = checkTexts[check].fixes;
  return Object.hasOwn(fixes, answer) ? fixes[answer as WrongId<CheckId>] : undefined;
}

/** What an answer that lets the work continue also means; most mean nothing more. */
export function meaningText(check: CheckId, answer: string): string | undefined {
  const means: Readonly<Partial<Record<OptionId<CheckId>, string>>> = checkTexts[check].means ?? {};
  return Object.hasOwn(means, answer) ? means[answer as OptionId<CheckId>] : undefined;
}
