import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { averagingWindow } from '../../core/field/evenness.ts';
import { plateThickness } from '../../core/cell/tub.ts';
import { limits, ventilation } from '../../core/facts/limits.ts';
import type { FigureId } from '../../core/plan/outcome.ts';
import type { RemarkId } from '../../core/plan/workings.ts';
import type { OwnInputId } from '../../core/plan/working-inputs.ts';
import { phrase } from './render.ts';
import { storedText } from './stored-text.ts';
import { datumText } from './units.ts';

/** Name of each figure on screen and paper, with blanks for limits. */
export const figureNames: Readonly<Record<FigureId, string>> = {
  equivalent_weight: 'Equivalent weight',
  water_volume: 'Water to add',
  bath_volume: 'Mixed bath',
  salt_mass: 'Salt to weigh',
  mass_percent: 'Strength by mass, water-free salt',
  molarity: 'Molar strength',
  density: 'Density of the bath',
  solubility: 'Most that dissolves, per litre of water',
  conductivity: 'Conductivity',
  cell_resistance: 'Resistance of the bath between piece and plate',
  current: 'Amps for this piece',
  volts: 'Volts',
  current_density: 'Current density',
  limiting_current_density: 'Most the liquid at the metal can carry',
  charge: 'Amp-hours',
  run_time: 'Time with current on',
  first_look: 'First look after',
  depth: 'Depth, mean',
  undercut: 'Undercut, each side',
  thinnest_line: 'Thinnest resist line that lasts',
  mass_removed: 'Metal removed',
  evenness: 'Evenness: shallow parts over deep parts',
  batch_evenness: 'Batch: shallowest piece over deepest',
  pieces_at_once: 'Pieces that your supply carries at once',
  current_asked: 'Amps that the cell would take at these volts',
  heating_rate: 'Warming, without cooling',
  bath_temperature_end: 'Bath at the end',
  minutes_to_warn_temperature: 'Bath at {warnTemperature} after',
  minutes_to_stop_temperature: 'Bath at {stopTemperature} after',
  hydrogen: 'Hydrogen given off',
  minutes_to_4_percent_in_1_L: 'Hydrogen burns under a closed {lid} lid after',
  hydrogen_air: 'Fresh air that carries the hydrogen off',
  hydrogen_opening: 'Opening for that air in, and as much out',
  chlorine_likely: 'Chlorine, most that is likely, in this room',
  minutes_to_chlorine_limit: 'Chlorine, fault case, passes the short limit after',
  chlorine_air: 'Fresh air that keeps the likely chlorine below the limit',
  chlorine_worst_case: 'Chlorine, fault case, in this room',
  practice_over_model: 'Trade time over model time',
  'dissolved_metal.Ag': 'Silver in the bath afterwards',
  'dissolved_metal.Cu': 'Copper in the bath afterwards',
  'dissolved_metal.Zn': 'Zinc in the bath afterwards',
  'dissolved_metal.Ni': 'Nickel in the bath afterwards',
  'dissolved_metal.Fe': 'Iron in the bath afterwards',
  'dissolved_metal.Pb': 'Lead in the bath afterwards',
  'dissolved_metal.Sn': 'Tin in the bath afterwards',
  'treatment_dose.NaCl': 'Table salt that drives the silver out',
  'treatment_dose.Na2CO3': 'Soda ash that drives the metal out',
  sludge_mass: 'Sludge, counted dry',
};

export const figureName = (id: FigureId, units: ReadingUnits): string => phrase(figureNames[id], {}, units);

/** Inputs that appear in workings but are not figures themselves. */
const inputNames: Readonly<Record<OwnInputId, string>> = {
  wanted_depth: 'wanted depth',
  bare_area: 'bare area, whole batch',
  piece_width: 'piece, width',
  piece_height: 'piece, height',
  gap: 'gap',
  plate_width: 'plate, width',
  plate_height: 'plate, height',
  tub_floor: 'tub, floor',
  fill: 'liquid, depth',
  strength: 'strength',
  bath_temperature: 'bath temperature',
  room: 'room',
  set_volts: 'volts knob',
  set_amps: 'amps knob or limit',
  metal_density: 'density of the metal',
  composition: 'alloy composition',
  valence: 'electrons an atom, by the bath’s anion',
  salt_molar_mass: 'molar mass of the salt',
  solubility_table: 'solubility table, points',
  conductivity_table: 'conductivity table, points',
  conductivity_slope: 'conductivity per kelvin',
  density_table: 'density table, points',
  faraday: 'Faraday constant',
  molar_volume: 'molar volume, {gasTemperature}, {gasPressure}',
  flammable_share: 'hydrogen burns from',
  warn_temperature: 'bath is warm from',
  stop_temperature: 'bath is stopped at',
  chlorine_limit: `chlorine, ${String(limits.chlorineShort.validFor.time[1])} minute limit`,
  chlorine_share: 'share of the current that may make chlorine',
  air_mixing: 'how badly the air mixes, factor',
  hydrogen_air_form: 'fresh air for each ampere',
  solved_field: 'cell solved in three dimensions, grid',
  free_chloride: 'chloride left over',
  plan_ceiling: 'highest volts of any plan',
  land_reserve: 'resist that still holds',
  side_cooling: 'cooling, sides and top',
  heat_capacity: 'heat capacity',
  practice_time: 'time the trade plans',
  practice_depth: 'depth the trade gets',
  path_form: 'widening on each side, per distance from the metal',
  film_transport: 'free convection, factor',
  conductivityFactor: 'recipe and table, factor',
  geometryFactor: 'path of the current, factor',
  thresholdVoltage: 'volts that drive no current',
  leads: 'leads and clips',
  currentEfficiency: 'bite rate, share of Faraday',
  slowness: 'films, sludge and contacts, factor',
  areaFactor: 'bare area, factor',
  volumeFactor: 'filling, factor',
  undercutRatio: 'undercut over depth',
  coolingFactor: 'cooling, factor',
  saturation: 'salt at the metal when saturated',
  meterFactor: 'meter, factor',
  roomFactor: 'room, factor',
};

/** @param id from a working, which is stored with its plan */
export const inputName = (id: string, units: ReadingUnits): string =>
  phrase(storedText({ ...figureNames, ...inputNames }, id), {}, units);

/** Remarks that workings can have. */
const remarkTexts: Readonly<Record<RemarkId, string>> = {
  'closed-form':
    'Closed form, gap/(k·A) with end allowance, not a solved field: range widened for where the bare parts may be.',
  'solved-field':
    'Solved in three dimensions for this piece, plate and tub; walls, floor and surface insulate. A round tub counts as the square of its floor.',
  'where-bare':
    'Without a drawing it is not known where the bare parts are: scattered over the face and close together are both solved, and both are inside the range.',
  'lots-closed-form':
    'The cell is solved for the whole batch; for fewer pieces its resistance is scaled by the closed form.',
  'averaged-2-mm': 'Averaged over {averaging}; edges bite deeper still. Model, not measured.',
  'above-one-percent': 'Constituents above {trace}, shares summing to one (ASTM G102).',
  'parts-immersed':
    'Tub to the line, less what pieces and plate displace (plate taken {plateThickness} thick).',
  anhydrous: 'Counted as the water-free salt; crystal water counts as water.',
  'energised-time': 'Time with current on; looks do not count.',
  'mean-depth': 'Mean over the bare metal; edges bite deeper than the middle.',
  'no-cooling': 'As if no heat left the tub.',
  'all-current': 'As if all of the current made this gas.',
  'whole-bath': 'For the whole bath after this run. Only where your authority allows it.',
  'no-more-salt': 'More table salt dissolves the silver again.',
  'pH-decides': 'Stop when the pH is right, not when the amount is used up: too much dissolves copper again.',
  'stays-damp': 'Counted dry; it is kept damp, and weighs {dampOverDry} times this.',
  'likely-case': `While the metal dissolves next to no chlorine forms; ${datumText(ventilation.chlorineShare)} of the charge is taken as the most that is likely, in a closed room. No source: our own guess.`,
  'warmer-conducts': 'A warmer bath conducts better, up to {stopTemperature}, and passes more current.',
  'ten-hours': 'Cut off at {dayOfWork}.',
  'fault-case': 'As if all of the charge made chlorine, in a closed room: a fault, not the run.',
  'no-credit-for-plating-out': 'As if none of it plated out on the plate.',
};

const remarkParams = {
  averaging: { value: 1e3 * averagingWindow, unit: 'mm' },
  plateThickness: { value: 1e3 * plateThickness, unit: 'mm' },
} as const;

/** @param id from a working, which is stored with its plan */
export const remarkText = (id: string, units: ReadingUnits): string =>
  phrase(storedText(remarkTexts, id), remarkParams, units);

/** Words for the kind of evidence, shown beside a number. */
export const evidenceNames = {
  measured: 'measured',
  fitted: 'fitted',
  computed: 'computed',
  regulatory: 'in law',
  commonPractice: 'common practice, no source',
  fromMemory: 'from memory, unchecked',
  yourLog: 'your log',
  yourInput: 'you typed it',
  atDefault: 'left at the default',
  proposed: 'proposed, not typed',
} as const;

/** Other texts of a figure. */
export const figureTexts = { how: 'How?' } as const;
