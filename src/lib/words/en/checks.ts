import { advice } from '../../core/facts/advice.ts';
import { limits, practice } from '../../core/facts/bench-facts.ts';
import type { UnitId } from '../../core/units/convert.ts';
import type { CheckId, HoldId, OptionId, WrongId } from '../../procedure/checks.ts';
import { plain } from './locale.ts';
import { datumText, withUnit } from './units.ts';

/** A check in words: what is asked, what can be seen, and what to do about each answer that is not right. */
interface CheckText<Id extends CheckId> {
  readonly asks: string;
  /** none where nothing is chosen */
  readonly options: Readonly<Record<OptionId<Id>, string>>;
  /** `number` for a reading out of range */
  readonly fixes: Readonly<Record<WrongId<Id>, string>>;
}

export const holdTexts: Readonly<Record<HoldId, { readonly title: string; readonly lead: string }>> = {
  mixing: { title: 'Stop and look: before mixing', lead: 'Look at each thing and say what you see.' },
  power: {
    title: 'Stop and look: before power',
    lead: 'Supply off. Look at each thing and say what you see.',
  },
  lifting: { title: 'Stop and look: before lifting', lead: 'Look first, then put your hands near.' },
  storing: { title: 'Stop and look: before storing', lead: 'Smell from arm’s length, then look.' },
};

/** How many checks of a hold are left. */
export const holdLeft = (left: number): string => (left === 0 ? 'All seen.' : `${String(left)} to look at.`);

/** Beside each check, how its answer stands. */
export const freshnessTexts = {
  fresh: 'seen',
  wrong: 'put it right',
  changed: 'check again',
  old: `check again: ${datumText(practice.answerHolds)} have passed`,
  spent: 'look again: the current has been off',
  unanswered: '',
} as const;

/** Of a check that is read off a scale. */
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

/** Whose letters they are, in the order asked. */
export const initialsTexts = {
  adult: 'Adult in charge',
  other: 'Who looked with them',
  say: 'We have both seen it',
  said: (value: string): string => `Seen by ${value.replace(' ', ' and ')}.`,
} as const;

/** Complete by type: a check, an option or a wrong answer without its words does not compile. */
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
  'bath-is': {
    asks: 'The jar from the shelf',
    options: {
      'the-one': 'carries the right label and looks as before',
      another: 'is another bath',
      smells: 'smells, or has a black crust',
    },
    fixes: {
      another: 'Put it back. Metals and salts must not be mixed. Take the one named in the job.',
      smells:
        'Do not open it further, move, shake or treat it. Keep people away. Call your waste collection, or the fire service.',
    },
  },
  'tub-holds': {
    asks: 'In the tub there is',
    options: {
      'clean-water': 'clean water, as poured',
      nothing: 'nothing yet',
      'something-else': 'something else',
    },
    fixes: {
      nothing: 'Pour the water first. Salt goes into water, not water on salt.',
      'something-else':
        'Empty it into its own labelled jar, never a drain. Rinse the tub, then pour clean water.',
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
  'piece-clip': {
    asks: 'The wire from your piece runs to',
    options: { plus: 'plus, +', minus: 'minus, −', 'not-sure': 'not sure' },
    fixes: {
      minus: 'Swap the two clips at the supply. On minus the piece grows rough and the plate dissolves.',
      'not-sure': 'Follow the wire with a finger from the piece to the supply. Read the sign at the socket.',
    },
  },
  'volts-knob': {
    asks: 'The volts knob, or the label of the supply, reads',
    options: {},
    fixes: {
      number: `Turn the volts down to what the plan says before you go on. ${datumText(limits.refusedVolts)} and more are never used.`,
    },
  },
  between: {
    asks: 'Between piece and plate you see',
    options: {
      'clear-liquid': 'clear liquid, top to bottom',
      touching: 'something touching or bridging',
      'not-sure': 'not sure',
    },
    fixes: {
      touching: 'Move them apart until clear liquid shows all the way. A bridge is a short circuit.',
      'not-sure': 'Look from the side and from above with a light.',
    },
  },
  'bubbles-low-volts': {
    asks: `At ${datumText(advice.polarityVolts)} or less, for ${plain(advice.polarityTime.value)} seconds, bubbles rise`,
    options: { 'at-plate': 'at the stainless plate', 'at-piece': 'at the piece', 'not-seen': 'not seen yet' },
    fixes: {
      'at-piece':
        'Supply off. The clips are swapped: stainless steel on plus makes poison. Swap them. If the liquid is yellow, keep it and hand it over.',
      'not-seen': `Look again with a light. If none rise, turn up slowly, never over ${datumText(advice.polarityVolts)}, then supply off.`,
    },
  },
  'tub-top': {
    asks: 'The top of the tub is',
    options: { open: 'open', covered: 'covered' },
    fixes: { covered: 'Take the cover off. Hydrogen under a lid can burn.' },
  },
  clips: {
    asks: 'Both clips hang',
    options: { 'dry-above': 'dry, above the liquid', wet: 'in or at the liquid' },
    fixes: { wet: 'Lift the clips clear. A wet clip dissolves and spoils the bath.' },
  },
  window: {
    asks: 'The window is',
    options: { open: 'open', outdoors: 'I work outdoors', closed: 'closed' },
    fixes: { closed: 'Open it. The gas must be able to leave.' },
  },
  'goggles-at-bath': {
    asks: 'Goggles now',
    options: { 'on-eyes': 'over my eyes', off: 'off' },
    fixes: { off: putOnGoggles },
  },
  'mask-holds': {
    asks: 'The resist is',
    options: { whole: 'whole: back, edges and hanger too', gaps: 'open somewhere it should not be' },
    fixes: { gaps: 'Dry the spot, touch it up, let it harden. Go back to the resist step if you need to.' },
  },
  'meter-reads': {
    asks: 'The supply’s meter reads',
    options: { zero: 'zero: switched off', 'not-zero': 'something else', 'not-sure': 'not sure' },
    fixes: {
      'not-zero': 'Switch off at the supply. Then read again.',
      'not-sure': 'Pull the plug of the supply. Then it is off.',
    },
  },
  'gloves-at-bath': {
    asks: 'Your gloves are',
    options: { 'on-whole': 'on, whole', torn: 'torn or wet inside', off: 'off' },
    fixes: { torn: putOnGloves, off: putOnGloves },
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
  'in-hand': {
    asks: 'In your hand are',
    options: { tongs: 'plastic tongs', fingers: 'only my fingers' },
    fixes: { fingers: 'Take plastic tongs. Fingers stay out of the bath.' },
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
  colour: {
    asks: 'The liquid is',
    options: {
      'as-before': 'clear, blue, green or cloudy',
      yellow: 'yellow or orange',
      'not-sure': 'not sure',
    },
    fixes: {
      yellow:
        'Yellow can be chromate, a poison. Touch nothing without gloves, close the jar, label it YELLOW, DO NOT TREAT, and hand it over.',
      'not-sure': 'Hold white paper behind it in daylight and look again.',
    },
  },
  crust: {
    asks: 'On plate and walls you see',
    options: { 'grey-or-none': 'grey moss, or nothing', black: 'a black crust' },
    fixes: {
      black:
        'Do not close, dry, scrape, shake or treat it: it can explode. Keep people away. Call the fire service for advice.',
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
  'goes-to': {
    asks: 'The bath goes to',
    options: {
      shelf: 'the shelf, locked, for the next job',
      collection: 'the waste collection, untreated',
      drain: 'the drain',
    },
    fixes: { drain: 'Never. It holds metal, and diluting is no cure. Keep it, or hand it over untreated.' },
  },
  'initials-mixing': twoHaveSeen,
  'initials-power': {
    ...twoHaveSeen,
    asks: 'An adult has a hand on the supply, and two have seen the marked checks',
  },
  'initials-lifting': twoHaveSeen,
  'initials-storing': twoHaveSeen,
};

/** What an option of a check says, with a blank for the salt. */
export const optionText = <Id extends CheckId>(check: Id, option: OptionId<Id>): string =>
  checkTexts[check].options[option];

/** What to do about an answer; undefined for one that no fix belongs to. @param answer may be stored */
export function fixText(check: CheckId, answer: string): string | undefined {
  const fixes: Readonly<Partial<Record<WrongId<CheckId>, string>>> = checkTexts[check].fixes;
  return Object.hasOwn(fixes, answer) ? fixes[answer as WrongId<CheckId>] : undefined;
}
