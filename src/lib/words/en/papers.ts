import { advice } from '../../core/facts/advice.ts';
import { minutes } from '../../core/facts/first-aid.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { FigureId } from '../../core/plan/outcome.ts';
import type { UnitId } from '../../core/units/convert.ts';
import { phrase } from './render.ts';
import { amountText, barText, datumText, symbolRead } from './units.ts';
import { rangeEnds } from '../../core/units/range.ts';

/** Texts that appear only on paper: the job sheet. */
export const sheetTexts = {
  kind: 'Job sheet',
  papers: 'Papers',
  footer: 'The label or data sheet of the bottle in hand wins. Local rules and licensed practice come first.',
  data: 'data {version}',
  page: 'page {page} of {pages}',
  bar: `${barText} when printed at 100 %`,
  fromThis:
    'Start from this: scan the code, or type its letters on the start page of the device that printed it.',
  drawingStays: 'The drawing stays on that device: the code carries only its bare area.',
  set: 'Set',
  gives: 'It gives',
  stopAfter: 'Stop after',
  firstLook: 'First look after',
  ceiling: 'Amps knob. Volts knob at {ceiling}, as a ceiling; the display will show about {display}.',
  voltsKnob: 'Volts knob. Amps are what the bath takes.',
  noKnob: 'By itself: nothing to set. Amps are what the bath takes.',
  atCharge: 'With current on: {charge} at {amps}.',
  currentOn: 'With current on; looks do not count.',
  lookHow: {
    meter: 'Supply off, meter at zero, then lift.',
    unplugged: 'Supply off, plug out, then lift.',
    'lead-off': 'A lead off the battery, then lift.',
  },
  noSettings: 'Measure the bare area, then plan again: without it there is nothing to set.',
  always: 'Piece on +. Plate on −. No lid. Goggles and gloves.',
  figures: 'Figures',
  figuresNote: `Worked out for the supply set as on the first page: {supply}. Low and high are ${100 * rangeEnds.low} % and ${100 * rangeEnds.high} % limits; the bar runs from a quarter to four times the value.`,
  value: 'value',
  unit: 'unit',
  range: 'low to high',
  readings: 'Readings',
  readingsNote:
    'Write at the start, at every look, and at the stop. See that the supply is off before you lift the piece.',
  result: 'Result',
  workings: 'Workings',
  workingsNote: 'How each figure came about. Numbers in brackets are the sources at the end.',
  sources: 'Sources',
  sourcesNote: 'How each was read is before its title.',
  restsOn: 'rests on',
} as const;

/** The job in four short columns. */
export const jobTexts = {
  piece: 'Piece',
  plate: 'Plate',
  bath: 'Bath',
  supply: 'Resist and supply',
  rectangle: '{width} × {height}',
  band: 'band, {width} × {height} flat',
  disc: 'disc',
  count: '{count} pieces alike',
  sheetMetal: '{thickness} thick',
  front: 'front bitten',
  back: 'back bitten',
  both: 'both faces bitten',
  bareArea: '{area} bare',
  wanted: '{depth} deep',
  gap: '{gap} from the piece',
  strength: '{strength} of water',
  record: 'bath {record}',
  bySupplyVolts: '{volts}',
  bySupplyVoltsLimit: '{volts}, {amps} at most',
  bySupplyAmps: '{amps}, {volts} at most',
} as const;

/** Figures in groups, in the order of the table. */
export const figureGroups: readonly { readonly title: string; readonly ids: readonly FigureId[] }[] = [
  {
    title: 'Electrical',
    ids: [
      'volts',
      'current',
      'current_asked',
      'pieces_at_once',
      'current_density',
      'limiting_current_density',
      'cell_resistance',
      'charge',
      'run_time',
      'first_look',
      'practice_over_model',
    ],
  },
  {
    title: 'Bath',
    ids: [
      'water_volume',
      'bath_volume',
      'salt_mass',
      'mass_percent',
      'molarity',
      'density',
      'solubility',
      'conductivity',
    ],
  },
  {
    title: 'Depth',
    ids: [
      'depth',
      'evenness',
      'batch_evenness',
      'undercut',
      'thinnest_line',
      'mass_removed',
      'equivalent_weight',
    ],
  },
  {
    title: 'Heat and gas',
    ids: [
      'heating_rate',
      'bath_temperature_end',
      'minutes_to_warn_temperature',
      'minutes_to_stop_temperature',
      'hydrogen',
      'minutes_to_4_percent_in_1_L',
      'hydrogen_air',
      'hydrogen_opening',
      'chlorine_likely',
      'chlorine_worst_case',
      'minutes_to_chlorine_limit',
      'chlorine_air',
    ],
  },
  {
    title: 'Waste',
    ids: [
      'dissolved_metal.Ag',
      'dissolved_metal.Cu',
      'dissolved_metal.Zn',
      'dissolved_metal.Ni',
      'dissolved_metal.Fe',
      'dissolved_metal.Pb',
      'dissolved_metal.Sn',
      'treatment_dose.NaCl',
      'treatment_dose.Na2CO3',
      'sludge_mass',
    ],
  },
];

/** Column heads of the table for readings. Only what this bench can read gets a column. */
export const readingHeads = (
  readable: readonly ('volts' | 'amps' | 'celsius')[],
  units: ReadingUnits,
): readonly string[] => [
  '',
  'clock',
  'min on',
  ...(['volts', 'amps', 'celsius'] as const).flatMap((id) =>
    !readable.includes(id) ? [] : [id === 'celsius' ? symbolRead('degC', units) : id],
  ),
  'what it looks like',
];
/** Lines to fill in after the job: name, unit (shown in the maker's own), and the figure to compare with. */
export const resultLines: readonly {
  readonly name: string;
  readonly unit: UnitId;
  readonly plan: FigureId | null;
  /** Printed only for a bench that has this tool. */
  readonly needs?: 'scale' | 'calliper' | 'amps';
}[] = [
  { name: 'Mass before', unit: 'g', plan: null, needs: 'scale' },
  { name: 'Mass after', unit: 'g', plan: null, needs: 'scale' },
  { name: 'Metal lost', unit: 'g', plan: 'mass_removed', needs: 'scale' },
  { name: 'Depth in the middle', unit: 'um', plan: 'depth' },
  { name: 'Depth near an edge', unit: 'um', plan: null, needs: 'calliper' },
  { name: 'Thinnest line that lasted', unit: 'um', plan: 'thinnest_line' },
  { name: 'Time with current on', unit: 'min', plan: null },
  { name: 'Amp-hours', unit: 'A.h', plan: 'charge', needs: 'amps' },
];
export const resultTexts = {
  plan: 'plan {value}',
  photo: 'Photo taken',
  label: 'Label on the jar brought up to date',
  next: 'Next time',
} as const;

/** How far a source was read. */
export const sourceReadings = {
  read: 'read',
  secondaryCopy: 'read in a copy',
  memory: 'from memory',
  own: 'own work',
} as const;

/** The bench card. */
export const cardTexts = {
  kind: 'Bench card',
  bath: '{salt}, {strength} of water',
  killers: [
    'Piece on +. Plate on −.',
    'Supply off before clips.',
    'No lid, no flame.',
    'Goggles and gloves.',
  ],
  stop: 'Stop after',
  volts: 'Volts',
  amps: 'Amps',
  orCharge: '{range}, or at {charge}',
  display: 'display, knob at {ceiling}',
  knob: 'set the knob',
  byItself: 'by itself, nothing to set',
  drawn: 'about {range}',
  readOff: 'as its meter shows',
  firstLook: 'First look after {look}.',
  beforeMixing: 'Before mixing',
  beforePower: 'Before power',
  beforeLifting: 'Before lifting',
  beforeStoring: 'Before storing',
  dressed: 'Goggles, gloves, apron on',
  polarity: 'Last: piece on +, plate on −',
  dry: 'Clips dry, nothing touches',
  open: 'No lid, no flame, window open',
  off: 'Supply is off',
  seenOff: { meter: 'Meter reads zero', unplugged: 'Its plug is out', 'lead-off': 'A lead is off it' },
  labelled: 'Label filled in, no food jar',
  loose: 'Lid loose, out of reach',
  splash: `Splash in an eye: tap water at once, ${datumText(minutes.rinseEye)}, lids open, lenses out. Then a doctor.`,
} as const;

/** The bath label. */
export const labelTexts = {
  notFood: 'NOT FOOD — DO NOT DRINK',
  contents: 'Used bath for {metal}: {salt}, {strength} of water{share}.',
  share: ' ({percent} by mass)',
  holds: 'After this job it holds {metals}.',
  holdsNow: 'It holds at most {metals}.',
  unknownSalt: 'Never with acid, ammonia, bleach or solvents: its salt is unknown here.',
  jar: 'Jar no. ________',
  byIngredient: 'By ingredient; words and symbols follow the CLP list of December 2021 (ATP17).',
  eyes: `Eyes: tap water ${datumText(minutes.rinseEye)}, lids open, lenses out; doctor.`,
  swallowed: 'Swallowed: rinse the mouth, no vomiting.',
  poison: 'Poison centre: ____________________',
  dates: ['Made on ____________', 'last used ____________', 'A·h __________'],
  datesNow: ['Made on {made}', 'last used {used}', '{charge} A·h'],
  reach: 'Keep away from children and pets.',
  job: 'Job {code}',
} as const;

/** The dissolved metal, by figure. */
export const dissolvedNames: Readonly<Record<Extract<FigureId, `dissolved_metal.${string}`>, string>> = {
  'dissolved_metal.Ag': 'silver',
  'dissolved_metal.Cu': 'copper',
  'dissolved_metal.Zn': 'zinc',
  'dissolved_metal.Ni': 'nickel',
  'dissolved_metal.Fe': 'iron',
  'dissolved_metal.Pb': 'lead',
  'dissolved_metal.Sn': 'tin',
};

/** How to make the cut-outs, printed beside them. Text on what is laminated goes through `laminateText`. */
export const cutTexts = {
  title: 'Cut, fold, check',
  print: `Print at 100 %. The bar below must measure ${barText}.`,
  card: 'Bench card: cut round the outline, fold on the dashed line, printed faces out. Laminate in an A6 pouch with {seal} of seal all round; write on it with a wet-erase pen or grease pencil.',
  label:
    'Bath label: cut out, glue on, tape over. Fill it in with a waterproof pen on the day the bath is mixed.',
  sheetTitle: 'Bath labels',
  sheet: 'Cut out, glue on, tape over. A used sheet goes in again: start at its first free place.',
  hang: 'Cut round the outline. Laminate with {seal} of seal all round, hang it where you work.',
  measured: 'Measured ______ mm',
  bar: barText,
} as const;

export const laminateText = (which: 'card' | 'hang', units: ReadingUnits): string =>
  phrase(
    cutTexts[which],
    { seal: { text: amountText(advice.seal.value, advice.seal.unit, units, 2) } },
    units,
  );

/** Texts on the page of the stencil. */
export const stencilTexts = {
  title: 'Stencil',
  mirrored: 'Mirrored: the print goes face down on the metal.',
  straight: 'Not mirrored: the print goes on as you see it.',
  length: `${barText}. Measured ______ mm`,
  bar: `Print at 100 %. If the bar is not ${barText} long, give what you measure and print again.`,
} as const;

/** The emergency strip, which hangs by the bench. */
export const stripTexts = {
  title: 'Help now',
  numbers: ['Emergency number ______________', 'Poison centre ____________________'],
} as const;

/** The card of what to wear. */
export const wearTexts = {
  title: 'What to wear',
  gloves: 'Gloves',
  eyes: 'Eyes',
  body: 'Body',
  air: 'Air',
} as const;
