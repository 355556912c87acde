/** Numbers of one evaluation, by figure id, each in the unit that `figureUnits` names. */
export type Outcome = Readonly<Record<string, number>>;

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
  current_density: 'A/dm2',
  limiting_current_density: 'A/dm2',
  charge: 'A.h',
  run_time: 'min',
  first_look: 'min',
  depth: 'um',
  undercut: 'um',
  thinnest_line: 'um',
  mass_removed: 'g',
  heating_rate: 'K/min',
  bath_temperature_end: 'degC',
  hydrogen: 'mL',
  minutes_to_4_percent_in_1_L: 'min',
  chlorine_worst_case: 'ppm',
  practice_over_model: '1',
  'dissolved_metal.Ag': 'mg/L',
  'dissolved_metal.Cu': 'mg/L',
  'dissolved_metal.Zn': 'mg/L',
  'dissolved_metal.Ni': 'mg/L',
  'dissolved_metal.Fe': 'mg/L',
  'dissolved_metal.Pb': 'mg/L',
  'dissolved_metal.Sn': 'mg/L',
} as const;

export type FigureId = keyof typeof figureUnits;
