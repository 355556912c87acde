import type { Working } from '../units/figure.ts';
import type { FigureId } from './outcome.ts';
import type { WorkingInputId, WorkingInputs } from './working-inputs.ts';

/** What a working adds to its numbers; the words room has the texts. */
export type RemarkId =
  | 'no-credit-for-plating-out'
  | 'above-one-percent'
  | 'parts-immersed'
  | 'anhydrous'
  | 'closed-form'
  | 'energised-time'
  | 'warmer-conducts'
  | 'mean-depth'
  | 'where-bare'
  | 'averaged-2-mm'
  | 'lots-closed-form'
  | 'no-cooling'
  | 'ten-hours'
  | 'all-current'
  | 'likely-case'
  | 'fault-case'
  | 'whole-bath'
  | 'no-more-salt'
  | 'pH-decides'
  | 'stays-damp'
  | 'solved-field';

/** How a figure is worked out: its formula, what goes in, and remarks that belong to it. */
interface Recipe {
  readonly formula: string;
  readonly inputs: readonly WorkingInputId[];
  readonly remarks?: readonly RemarkId[];
}

const dissolved: Recipe = {
  formula: 'c = c₀ + m·f/V',
  inputs: ['mass_removed', 'composition', 'bath_volume'],
  remarks: ['no-credit-for-plating-out'],
};

const warming: readonly WorkingInputId[] = [
  'volts',
  'current',
  'conductivity_slope',
  'bath_volume',
  'side_cooling',
  'coolingFactor',
  'heat_capacity',
  'bath_temperature',
];

const recipes: Readonly<Record<FigureId, Recipe>> = {
  equivalent_weight: {
    formula: 'EW = 1/Σ(f·n/M)',
    inputs: ['composition', 'valence'],
    remarks: ['above-one-percent'],
  },
  water_volume: {
    formula: 'Vw = V·ρ/(ρw + S)',
    inputs: ['tub_floor', 'fill', 'strength', 'density', 'volumeFactor'],
    remarks: ['parts-immersed'],
  },
  bath_volume: { formula: 'V = Vw·(ρw + S)/ρ', inputs: ['water_volume', 'strength', 'density'] },
  salt_mass: { formula: 'm = S·Vw', inputs: ['strength', 'water_volume'] },
  mass_percent: {
    formula: 'w = S·x/(ρw + S)',
    inputs: ['strength', 'bath_temperature'],
    remarks: ['anhydrous'],
  },
  molarity: { formula: 'c = w·ρ/M', inputs: ['mass_percent', 'density', 'salt_molar_mass'] },
  density: {
    formula: 'ρ = ρ(w, 20 °C)·ρ′(T)/ρ′(20 °C)',
    inputs: ['mass_percent', 'bath_temperature', 'density_table'],
  },
  solubility: { formula: 's = table(T)·ρw', inputs: ['bath_temperature', 'solubility_table'] },
  conductivity: {
    formula: 'k = k(w, 20 °C)·(1 + a·(T − 20))',
    inputs: [
      'mass_percent',
      'bath_temperature',
      'conductivity_table',
      'conductivity_slope',
      'conductivityFactor',
    ],
  },
  cell_resistance: {
    formula: 'R = gap/(k·A), A widening away from each face',
    inputs: [
      'gap',
      'conductivity',
      'piece_width',
      'piece_height',
      'bare_area',
      'plate_width',
      'plate_height',
      'path_form',
      'geometryFactor',
    ],
    remarks: ['closed-form'],
  },
  current: {
    formula: 'I = (V − V₀)/(R + Rl), within the supply’s limit',
    inputs: ['set_volts', 'set_amps', 'thresholdVoltage', 'cell_resistance', 'leads', 'slowness'],
  },
  volts: {
    formula: 'V = V₀ + I·(R + Rl), within the supply’s limit',
    inputs: ['set_volts', 'set_amps', 'thresholdVoltage', 'cell_resistance', 'leads', 'plan_ceiling'],
  },
  current_asked: {
    formula: 'I = (V − V₀)/(R + Rl), as if the supply had no limit',
    inputs: ['set_volts', 'thresholdVoltage', 'cell_resistance', 'leads', 'slowness'],
  },
  current_density: { formula: 'j = I/A', inputs: ['current', 'bare_area', 'areaFactor'] },
  limiting_current_density: {
    formula: '1/j = H/(n·F·D·c·0.66·(Sc·Gr)^¼) + d/(n·F·D·c)',
    inputs: ['piece_height', 'wanted_depth', 'saturation', 'film_transport'],
  },
  charge: {
    formula: 'Q = d·ρ·A·F/(y·EW)',
    inputs: [
      'wanted_depth',
      'metal_density',
      'bare_area',
      'faraday',
      'currentEfficiency',
      'equivalent_weight',
    ],
  },
  run_time: {
    formula: 'Q = ∫I dt, I rising as the bath warms',
    inputs: ['charge', 'current', 'conductivity_slope', 'heating_rate', 'side_cooling'],
    remarks: ['energised-time', 'warmer-conducts'],
  },
  first_look: {
    formula: 'least of 5 min, a third of the shortest time, and 3 min without an ammeter',
    inputs: ['run_time'],
  },
  depth: {
    formula: 'd = y·Q·EW/(F·ρ·A)',
    inputs: ['charge', 'currentEfficiency', 'equivalent_weight', 'metal_density', 'bare_area', 'faraday'],
    remarks: ['mean-depth'],
  },
  evenness: {
    formula: '5 % of the bare metal bites less than this share of what 5 % bites more than',
    inputs: [
      'solved_field',
      'piece_width',
      'piece_height',
      'bare_area',
      'plate_width',
      'plate_height',
      'gap',
    ],
    remarks: ['where-bare', 'averaged-2-mm'],
  },
  batch_evenness: {
    formula: 'least bitten piece over most bitten piece, pieces in rows across the tub',
    inputs: ['solved_field', 'piece_width', 'piece_height', 'plate_width', 'plate_height', 'gap'],
  },
  pieces_at_once: {
    formula: 'most pieces whose current stays within the supply’s',
    inputs: ['current_asked', 'set_amps'],
    remarks: ['lots-closed-form'],
  },
  undercut: { formula: 'u = r·d', inputs: ['depth', 'undercutRatio'] },
  thinnest_line: { formula: 'b = 2·u + reserve', inputs: ['undercut', 'land_reserve'] },
  mass_removed: {
    formula: 'm = y·Q·EW/F',
    inputs: ['charge', 'currentEfficiency', 'equivalent_weight', 'faraday'],
  },
  heating_rate: {
    formula: 'r = V·I/(m·c)',
    inputs: ['volts', 'current', 'bath_volume', 'heat_capacity'],
    remarks: ['no-cooling'],
  },
  bath_temperature_end: {
    formula: 'm·c·dT/dt = V·I − hA·(T − T₀), I rising as the bath warms',
    inputs: ['run_time', ...warming],
    remarks: ['warmer-conducts'],
  },
  minutes_to_warn_temperature: {
    formula: 't = ∫m·c/(V·I − hA·(T − T₀)) dT',
    inputs: ['warn_temperature', ...warming],
    remarks: ['warmer-conducts', 'ten-hours'],
  },
  minutes_to_stop_temperature: {
    formula: 't = ∫m·c/(V·I − hA·(T − T₀)) dT',
    inputs: ['stop_temperature', ...warming],
    remarks: ['warmer-conducts', 'ten-hours'],
  },
  hydrogen: {
    formula: 'V = Q/(2·F)·Vm',
    inputs: ['charge', 'faraday', 'molar_volume'],
    remarks: ['all-current'],
  },
  minutes_to_4_percent_in_1_L: {
    formula: 't = 0.04·V/G',
    inputs: ['current', 'molar_volume', 'flammable_share'],
    remarks: ['all-current'],
  },
  hydrogen_air: {
    formula: 'q = 0.05 m³/h for each ampere (EN 62485)',
    inputs: ['current', 'hydrogen_air_form'],
    remarks: ['all-current'],
  },
  hydrogen_opening: {
    formula: 'A = 28 cm² for each m³/h, one opening in and one out (EN 62485)',
    inputs: ['hydrogen_air'],
  },
  chlorine_likely: {
    formula: 'c = f·Q/(2·F)·Vm/room',
    inputs: ['chlorine_share', 'charge', 'room', 'molar_volume', 'roomFactor'],
    remarks: ['likely-case'],
  },
  minutes_to_chlorine_limit: {
    formula: 't = limit·room/G',
    inputs: ['current', 'room', 'molar_volume', 'chlorine_limit', 'roomFactor'],
    remarks: ['fault-case'],
  },
  chlorine_air: {
    formula: 'q = K·f·G/limit',
    inputs: ['chlorine_share', 'current', 'molar_volume', 'chlorine_limit', 'air_mixing'],
    remarks: ['likely-case'],
  },
  chlorine_worst_case: {
    formula: 'c = Q/(2·F)·Vm/room',
    inputs: ['charge', 'room', 'molar_volume', 'roomFactor'],
    remarks: ['fault-case'],
  },
  practice_over_model: {
    formula: 'trade time/model time, at the same depth',
    inputs: ['run_time', 'practice_time', 'practice_depth'],
  },
  'treatment_dose.NaCl': {
    formula: 'm = (n(Ag) + c·V)·M',
    inputs: ['dissolved_metal.Ag', 'bath_volume', 'free_chloride'],
    remarks: ['whole-bath', 'no-more-salt'],
  },
  'treatment_dose.Na2CO3': {
    formula: 'm = Σn·M, one to one',
    inputs: ['dissolved_metal.Cu', 'dissolved_metal.Zn', 'dissolved_metal.Fe', 'bath_volume'],
    remarks: ['whole-bath', 'pH-decides'],
  },
  sludge_mass: {
    formula: 'm = Σn·M of what settles, dry',
    inputs: ['dissolved_metal.Ag', 'dissolved_metal.Cu', 'dissolved_metal.Zn', 'bath_volume'],
    remarks: ['stays-damp'],
  },
  'dissolved_metal.Ag': dissolved,
  'dissolved_metal.Cu': dissolved,
  'dissolved_metal.Zn': dissolved,
  'dissolved_metal.Ni': dissolved,
  'dissolved_metal.Fe': dissolved,
  'dissolved_metal.Pb': dissolved,
  'dissolved_metal.Sn': dissolved,
};

/** What takes the place of the closed form once the cell has been solved. */
const solvedResistance: Recipe = {
  formula: 'div (k grad φ) = 0 in the tub; R = V/I',
  inputs: [
    'solved_field',
    'gap',
    'conductivity',
    'piece_width',
    'piece_height',
    'bare_area',
    'plate_width',
    'plate_height',
    'geometryFactor',
  ],
  remarks: ['solved-field', 'where-bare'],
};

const recipeOf = (id: FigureId, workingInputs: WorkingInputs): Recipe =>
  id === 'cell_resistance' && workingInputs.solved_field ? solvedResistance : recipes[id];

/** The working of a figure: inputs that this job has, and all sources behind them. */
export function workingOf(id: FigureId, workingInputs: WorkingInputs): Working {
  const { formula, inputs, remarks = [] } = recipeOf(id, workingInputs);
  const named = inputs.flatMap((name) => workingInputs[name] ?? []);
  return { formula, inputs: named, sources: sourcesOf(id, workingInputs, new Set()), remarks };
}

/** Sources of a figure and of every figure that goes into it. */
function sourcesOf(id: FigureId, workingInputs: WorkingInputs, seen: Set<string>): string[] {
  seen.add(id);
  const found = recipeOf(id, workingInputs).inputs.flatMap((name) => {
    const own = workingInputs[name]?.sources ?? [];
    const isFigure = Object.hasOwn(recipes, name) && !seen.has(name);
    return isFigure ? [...own, ...sourcesOf(name as FigureId, workingInputs, seen)] : own;
  });
  return [...new Set(found)].sort();
}
