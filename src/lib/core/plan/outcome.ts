/** Every figure's id and unit. Ids and units never change; new ones may be added. */
export const figureUnits = {
  equivalent_weight: 'g/mol',
  water_volume: 'mL',
  bath_volume: 'mL',
  salt_mass: 'g',
  mass_percent: '%',
  molarity: 'mol/L',
  density: 'g/cm3',
  solubility: 'g/L',
  conductivity: 'mS/cm',
  cell_resistance: 'ohm',
  current: 'A',
  volts: 'V',
  current_asked: 'A',
  current_density: 'A/dm2',
  limiting_current_density: 'A/dm2',
  charge: 'A.h',
  run_time: 'min',
  first_look: 'min',
  depth: 'um',
  undercut: 'um',
  thinnest_line: 'um',
  mass_removed: 'g',
  evenness: '%',
  batch_evenness: '%',
  pieces_at_once: '1',
  heating_rate: 'K/min',
  bath_temperature_end: 'degC',
  minutes_to_warn_temperature: 'min',
  minutes_to_stop_temperature: 'min',
  hydrogen: 'mL',
  minutes_to_4_percent_in_1_L: 'min',
  hydrogen_air: 'm3/h',
  hydrogen_opening: 'cm2',
  chlorine_likely: 'ppm',
  chlorine_worst_case: 'ppm',
  minutes_to_chlorine_limit: 'min',
  chlorine_air: 'm3/h',
  practice_over_model: '1',
  'dissolved_metal.Ag': 'mg/L',
  'dissolved_metal.Cu': 'mg/L',
  'dissolved_metal.Zn': 'mg/L',
  'dissolved_metal.Ni': 'mg/L',
  'dissolved_metal.Fe': 'mg/L',
  'dissolved_metal.Pb': 'mg/L',
  'dissolved_metal.Sn': 'mg/L',
  'treatment_dose.NaCl': 'g',
  'treatment_dose.Na2CO3': 'g',
  sludge_mass: 'g',
} as const;

export type FigureId = keyof typeof figureUnits;

export const figureIds = Object.keys(figureUnits) as readonly FigureId[];

export const isFigureId = (id: string): id is FigureId => Object.hasOwn(figureUnits, id);

/** Numbers of one evaluation, each in the unit that `figureUnits` names; a job has only some of them. */
export type Outcome = Readonly<Partial<Record<FigureId, number>>>;

/** An outcome that holds these figures whatever the job. */
export type OutcomeWith<Id extends FigureId> = Outcome & Readonly<Record<Id, number>>;

/** @throws RangeError for a figure that was not evaluated */
export function figureIn(outcome: Outcome, id: FigureId): number {
  const value = outcome[id];
  if (value === undefined) throw new RangeError(`figure ${id} expected, none evaluated`);
  return value;
}
