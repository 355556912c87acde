import { limits } from '../../core/facts/limits.ts';
import { firstAid, minutes } from '../../core/facts/first-aid.ts';
import type { FirstAidLine } from '../../core/facts/first-aid.ts';
import { sources } from '../../core/facts/sources.ts';
import { troubleIds } from './help-ids.ts';
import type { TroubleId } from './help-ids.ts';
import { datumText } from './units.ts';

const texts: Readonly<Record<FirstAidLine, string>> = {
  'eye-rinse': 'Rinse the eye now. Lukewarm running water, lids held open.',
  'eye-outward': 'Let it run from the nose outward. The other eye stays clean.',
  'eye-lenses': 'Take contact lenses out early. Blink.',
  'eye-minutes': `Go on for ${minutes.rinseEye.value} minutes by the clock.`,
  'eye-call': 'Call your poison centre, or have somebody call while you rinse.',
  'eye-never': 'No rubbing, no drops, nothing to neutralise it.',
  'eye-hour': 'An hour later it hurts, is red or blurred, or light hurts: eye doctor today.',
  'eye-metal': 'To an eye doctor straight after rinsing, even if it feels well. Take the label.',
  'eye-lye': `Rinse ${minutes.rinseEyeLye.value} minutes, and on until a doctor sees the eye. Emergency number.`,
  'eye-yellow': 'It can hold chromate. Emergency number, and say “chromate”.',
  'skin-rinse': 'Rinse now, with plenty of running water.',
  'skin-off': 'Take off wet clothes, rings and watch while the water runs.',
  'skin-powder': 'Dry powder: brush it off first, then rinse.',
  'skin-minutes': `Go on for ${minutes.rinseSkin.value} minutes by the clock.`,
  'skin-doctor':
    'Blisters, white or numb skin, larger than a palm, or on face or hands: your emergency number.',
  'skin-nitrate': 'Soak clothes wet with it at once. Dry, they burn like tinder.',
  'skin-silver': 'A black stain wears off in one to two weeks. Do not bleach the skin.',
  'skin-lye': `It feels like soap. Rinse until that is gone, then ${minutes.rinseSkin.value} minutes more.`,
  'skin-solvent': 'Wash with soap and water. Cream later.',
  'skin-nickel': 'A rash later: stop the work, see a doctor, name the metal.',
  'mouth-rinse': 'Rinse the mouth. Spit it out.',
  'mouth-call': 'Call your poison centre now. Do what they say.',
  'mouth-vomit': 'Do not make anyone vomit.',
  'mouth-drink': 'Nothing to drink unless they tell you.',
  'mouth-tell': 'Tell them age and weight, what the label says, how much, and when.',
  'mouth-nitrate': 'Blue lips or nails, headache, dizziness, cramps: your emergency number.',
  'mouth-metal': 'Throwing up by itself is usual. Call the poison centre even so.',
  'mouth-lye': 'Your emergency number, at once.',
  'mouth-child': 'Blue, green or dark mouth: call even if the child seems well.',
  'gas-out': 'Out, into fresh air. Take the others along.',
  'gas-plug': 'Pull the plug on the way, if it is within reach.',
  'gas-sit': 'Sit half upright, keep still and warm, loosen the collar.',
  'gas-stay-out': 'Do not go back in. Let the room air for half an hour.',
  'gas-call': 'Short of breath, tight chest, coughing that goes on: your emergency number.',
  'gas-nothing': 'Add nothing to the bath. Never an acid.',
  'gas-chlorine':
    'Chlorine. See a doctor the same day, even if well: it can harm the lungs hours later. Watch for two days.',
  'gas-brown':
    'Nitrogen oxides. See a doctor the same day, even if well: the lungs can fill hours later. Watch for two days.',
  'gas-ammonia':
    'Do not close, move, dry, scrape or treat that bath: it can explode. Keep people away. Ask the fire service.',
  'gas-solvent': 'No flame, no switch. Not awake: on the side, and your emergency number.',
  'fire-out':
    'Everybody out. Larger than a bin, or brown smoke: leave, shut the door, your emergency number.',
  'fire-plug': 'Pull the plug before any water.',
  'fire-nitrate': 'Plenty of water. A blanket does not stop it: nitrate brings its own oxygen.',
  'fire-solvent': 'A lid over it, foam or carbon dioxide. No water.',
  'fire-clothes': 'Clothes: drench them, or roll on the floor.',
  'fire-burn': `A burn: cool running water for ${minutes.coolBurn.value} minutes. Leave what sticks.`,
  'shock-plug': 'Pull the plug, or switch off the fuse, before you touch anyone.',
  'shock-call': 'Not awake or not breathing: your emergency number. They guide you.',
  'shock-doctor': 'After a shock from the mains see a doctor today, even if well.',
  'shock-burn': `Burnt by a ring or a clip: metal off, cool running water for ${minutes.coolBurn.value} minutes.`,
  'shock-mains': `${datumText(limits.refusedVolts)} give no shock. If you felt one, it was the mains: never use that supply again.`,
  'cut-rinse': 'Rinse the cut now, under running water.',
  'cut-minutes': `Go on for ${minutes.rinseCut.value} minutes by the clock.`,
  'cut-press': 'Press with a clean cloth until the bleeding stops. It spurts: your emergency number.',
  'cut-cover': 'Cover it. No more bath today.',
  'cut-doctor': 'Deep, with metal left in it, or no tetanus cover: doctor today.',
  'cut-silver': 'Silver can leave a dark mark under the skin. Say “silver salt” to the doctor.',
  'cut-nickel': 'Say “nickel” or “chromium” to the doctor. Watch for a rash.',
  'yellow-off': 'Switch the supply off. Leave the piece where it is.',
  'yellow-hands': 'Touch nothing wet. Splashed: rinse now, then look up eye or skin here.',
  'yellow-keep':
    'Keep the bath. Gloves and goggles on, then cover it where it stands and write on it: YELLOW, DO NOT TREAT.',
  'yellow-hand-over': 'Hand it over to your waste collection. Say it may hold chromate.',
  'yellow-never': 'Nothing down a drain. Add nothing, boil nothing, do not use it again.',
  'yellow-chromium':
    'It can be chromate, a poison that causes cancer. Do all five lines above, and throw no clip back in the drawer.',
  'yellow-copper':
    'Orange or yellow mud that sinks is common there: copper that has not turned blue or green yet. Only if nothing stainless or chromed was in the bath: let it settle and go on.',
  'yellow-iron':
    'Brown-yellow that sinks as rust is the iron itself. Not sure that it is plain: take it for chromate.',
  'yellow-else': 'Clear and yellow, or not sure what was in it: take it for chromate.',
};

interface Difference {
  /** What was in the splash, in the mouth or in the air. */
  readonly of: string;
  readonly line: FirstAidLine;
}

interface Trouble {
  /** Text on the tile. */
  readonly name: string;
  /** Heading over the lines. */
  readonly title: string;
  readonly lines: readonly FirstAidLine[];
  readonly differs: readonly Difference[];
}

const silverOrCopper = 'Blue copper salt; a used silver or copper bath';
const nitrates = 'Sodium or potassium nitrate';
const lye = 'Lye (sodium hydroxide)';

const troubles: Readonly<Record<TroubleId, Trouble>> = {
  eye: {
    name: 'Eye',
    title: 'Splash in the eye',
    lines: ['eye-rinse', 'eye-outward', 'eye-lenses', 'eye-minutes', 'eye-call', 'eye-never'],
    differs: [
      { of: silverOrCopper, line: 'eye-metal' },
      { of: lye, line: 'eye-lye' },
      { of: 'A yellow bath', line: 'eye-yellow' },
      { of: 'Nitrate, table salt, soda, solvent', line: 'eye-hour' },
    ],
  },
  skin: {
    name: 'Skin',
    title: 'Splash on the skin',
    lines: ['skin-rinse', 'skin-off', 'skin-powder', 'skin-minutes', 'skin-doctor'],
    differs: [
      { of: nitrates, line: 'skin-nitrate' },
      { of: 'A silver bath', line: 'skin-silver' },
      { of: lye, line: 'skin-lye' },
      { of: 'Acetone, alcohol', line: 'skin-solvent' },
      { of: 'Nickel or chromium', line: 'skin-nickel' },
    ],
  },
  swallowed: {
    name: 'Swallowed',
    title: 'Swallowed',
    lines: ['mouth-rinse', 'mouth-call', 'mouth-vomit', 'mouth-drink', 'mouth-tell'],
    differs: [
      { of: nitrates, line: 'mouth-nitrate' },
      { of: silverOrCopper, line: 'mouth-metal' },
      { of: 'Lye, nickel, a yellow bath', line: 'mouth-lye' },
      { of: 'A child', line: 'mouth-child' },
    ],
  },
  gas: {
    name: 'Gas, smell',
    title: 'Gas or a smell',
    lines: ['gas-out', 'gas-plug', 'gas-sit', 'gas-stay-out', 'gas-call', 'gas-nothing'],
    differs: [
      { of: 'A smell of swimming pool', line: 'gas-chlorine' },
      { of: 'Brown gas', line: 'gas-brown' },
      { of: 'A smell of ammonia at a silver bath', line: 'gas-ammonia' },
      { of: 'Acetone, alcohol', line: 'gas-solvent' },
    ],
  },
  fire: {
    name: 'Fire',
    title: 'Fire',
    lines: ['fire-out', 'fire-plug', 'fire-clothes', 'fire-burn'],
    differs: [
      { of: 'Nitrate, or paper wet with it', line: 'fire-nitrate' },
      { of: 'Acetone, alcohol', line: 'fire-solvent' },
    ],
  },
  shock: {
    name: 'Shock',
    title: 'Electric shock',
    lines: ['shock-plug', 'shock-call', 'shock-doctor', 'shock-burn', 'shock-mains'],
    differs: [],
  },
  cut: {
    name: 'Cut',
    title: 'Cut with bath in it',
    lines: ['cut-rinse', 'cut-minutes', 'cut-press', 'cut-cover', 'cut-doctor'],
    differs: [
      { of: 'A silver bath', line: 'cut-silver' },
      { of: 'Nickel or chromium', line: 'cut-nickel' },
    ],
  },
  yellow: {
    name: 'Yellow bath',
    title: 'The bath went yellow',
    lines: ['yellow-off', 'yellow-hands', 'yellow-keep', 'yellow-hand-over', 'yellow-never'],
    differs: [
      { of: 'Stainless steel, chrome or nichrome, even a clip', line: 'yellow-chromium' },
      { of: 'Copper, brass or bronze in table salt', line: 'yellow-copper' },
      { of: 'Plain iron or steel in table salt', line: 'yellow-iron' },
      { of: 'Anything else', line: 'yellow-else' },
    ],
  },
};

export const helpTitle = 'Help now';
/** Shown first on every page of help. */
export const helpFirst =
  'Not awake, fitting, fighting for breath: your emergency number first. It differs by country, and so does that of the poison centre.';
export const helpClock = 'A run that is on goes on counting while you are here. The supply stays as it is.';

export interface HelpPage {
  readonly id: TroubleId;
  readonly name: string;
  readonly title: string;
  readonly lines: readonly { readonly id: string; readonly text: string }[];
  readonly differs: readonly { readonly id: FirstAidLine; readonly of: string; readonly text: string }[];
  readonly sources: readonly string[];
}

/** All that a page of help shows. */
export function helpPage(id: TroubleId): HelpPage {
  const { name, title, lines, differs } = troubles[id];
  const used = [...lines, ...differs.map(({ line }) => line)].map((line) => firstAid[line].source);
  return {
    id,
    name,
    title,
    lines: lines.map((line) => ({ id: line, text: texts[line] })),
    differs: differs.map(({ of, line }) => ({ id: line, of, text: texts[line] })),
    sources: [...new Set(used)].map((source) => sources[source].title),
  };
}

/** All pages, in the order of the tiles. */
export const helpTiles: readonly HelpPage[] = troubleIds.map(helpPage);

/**
 * First aid only, for the paper strip by the tub. A bath that looks wrong is left out: it has hurt nobody
 * yet.
 */
export const helpPages: readonly HelpPage[] = helpTiles.filter(({ id }) => id !== 'yellow');

/** Other texts on every page of help. */
export const helpTexts = {
  differs: 'If it was',
  other: 'Something else happened',
  back: 'Back to the job',
  none: 'There is no such help.',
  wrong: 'Nobody is hurt, but something looks wrong',
  wrongLead:
    'Each sign with its likely cause, what to do now, and what to do next time. Not sure: power off, then look.',
  from: (sources: readonly string[]): string => `From: ${sources.join(' · ')}`,
} as const;
