import type { Evidence, WorkingInput } from '../units/figure.ts';
import { FARADAY } from '../units/constants.ts';
import { toSi } from '../units/convert.ts';
import type { UnitId, UnitSymbol } from '../units/convert.ts';
import type { JobField } from '../job/field-kinds.ts';
import { jobFields } from '../job/fields.ts';
import type { JobPath } from '../job/fields.ts';
import { metals } from '../facts/metals.ts';
import { landReserve, limits, practice, tubCooling, ventilation } from '../facts/limits.ts';
import { freeChloride } from '../facts/treatment.ts';
import type { Datum } from '../facts/datum.ts';
import { molarVolume } from '../chemistry/gas.ts';
import { boxOf } from '../cell/tub.ts';
import type { Setup } from '../cell/setup.ts';
import type { SolvedField } from '../cell/solved-field.ts';
import type { Budget, InputId, Pairing } from './budget.ts';
import type { JobInput } from './job-input.ts';
import { inputIds } from './budget.ts';
import { figureIds, figureUnits } from './outcome.ts';
import { celsiusOf } from '../units/quantity.ts';
import type { FigureId, Outcome } from './outcome.ts';

/** A set-up, and which of its answers nobody typed. */
type Answered = Setup & Pick<JobInput, 'untyped'>;

/** An input that is no figure itself: typed, looked up, drawn from the budget, or the grid of a solved cell. */
export type OwnInputId = keyof ReturnType<typeof given> | InputId | 'solved_field';
/** Everything that a working may name. */
export type WorkingInputId = OwnInputId | FigureId;
export type WorkingInputs = Readonly<Partial<Record<WorkingInputId, WorkingInput>>>;

/** An answer in its unit, and whether it was typed, proposed, or left at its default. */
const answers =
  (untyped: readonly JobPath[] = []) =>
  (value: number, unit: UnitSymbol, path: JobPath): Omit<WorkingInput, 'id'> => {
    const { blank = '', dimension, unit: own = unit }: JobField = jobFields[path];
    const isDefault = (): boolean =>
      dimension !== undefined &&
      Math.abs(toSi(value, unit, dimension) / toSi(Number(blank), own, dimension) - 1) < 1e-9;
    const evidence = !untyped.includes(path) ? 'yourInput' : isDefault() ? 'atDefault' : 'proposed';
    return { value, unit, evidence, sources: [] };
  };

const known = ({ value, unit, evidence, source }: Datum): Omit<WorkingInput, 'id'> => ({
  value,
  unit,
  evidence,
  sources: [source],
});

const table = (
  value: number,
  unit: UnitId,
  evidence: Evidence,
  ...sources: string[]
): Omit<WorkingInput, 'id'> => ({
  value,
  unit,
  evidence,
  sources,
});

/** What was typed and looked up before anything is computed. */
function given({ piece, cathode, tub, bath, supply, place, untyped }: Answered, { metal, salt }: Pairing) {
  const box = boxOf(tub);
  const facts = metals[metal];
  const typed = answers(untyped);
  return {
    wanted_depth: typed(piece.depth * 1e6, 'um', 'piece.depth'),
    ...(piece.openArea === null
      ? {}
      : { bare_area: typed(piece.openArea * piece.count * 1e4, 'cm2', 'piece.openArea') }),
    piece_width: typed(piece.width * 1e3, 'mm', 'piece.width'),
    piece_height: typed(piece.height * 1e3, 'mm', 'piece.height'),
    gap: typed(cathode.gap * 1e3, 'mm', 'cathode.gap'),
    plate_width: typed(cathode.width * 1e3, 'mm', 'cathode.width'),
    plate_height: typed(cathode.height * 1e3, 'mm', 'cathode.height'),
    tub_floor: typed(box.floor * 1e4, 'cm2', 'tub.length'),
    fill: typed(box.fill * 1e3, 'mm', 'tub.fill'),
    strength: typed(bath.strength, 'g/L', 'bath.strength'),
    bath_temperature: typed(celsiusOf(bath.temperature), 'degC', 'bath.temperature'),
    ...(place.room === null ? {} : { room: typed(place.room, 'm3', 'place.room') }),
    ...(supply.control === 'volts'
      ? {
          set_volts: typed(supply.volts, 'V', 'supply.volts'),
          ...(supply.maxAmps === null ? {} : { set_amps: typed(supply.maxAmps, 'A', 'supply.maxAmps') }),
        }
      : {
          set_amps: typed(supply.amps, 'A', 'supply.amps'),
          set_volts: typed(supply.maxVolts, 'V', 'supply.maxVolts'),
        }),
    metal_density: known(facts.density),
    composition: table(100, '%', facts.composition.evidence, facts.composition.source),
    valence: table(1, '1', 'measured', 'kinoshita1970', 'astmG102'),
    salt_molar_mass: known(salt.facts.molarMass),
    solubility_table: table(salt.facts.solubility.y.length, '1', 'measured', salt.facts.solubility.source),
    conductivity_table: table(
      salt.facts.conductivity.y.length,
      '1',
      'measured',
      salt.facts.conductivity.source,
    ),
    conductivity_slope: known(salt.facts.conductivitySlope),
    density_table: table(
      salt.facts.density.y.length,
      '1',
      'measured',
      salt.facts.density.source,
      'laliberte2009',
    ),
    faraday: table(FARADAY, 'C/mol', 'measured', 'codata2018'),
    molar_volume: table(molarVolume() * 1e3, 'L/mol', 'computed', 'codata2018'),
    flammable_share: known(limits.hydrogenFlammable),
    warn_temperature: known(limits.warnTemperature),
    stop_temperature: known(limits.stopTemperature),
    chlorine_limit: known(limits.chlorineShort),
    chlorine_share: known(ventilation.chlorineShare),
    air_mixing: known(ventilation.mixing),
    hydrogen_air_form: table(0.05, 'm3/h', 'measured', 'batteryVent'),
    free_chloride: known(freeChloride.wanted),
    plan_ceiling: known(limits.planVolts),
    land_reserve: known(landReserve),
    side_cooling: known(tubCooling.side),
    heat_capacity: known(tubCooling.heatCapacity),
    practice_time: known(practice.plannedMinutes),
    practice_depth: known(practice.practiceDepth),
    path_form: table(1, '1', 'computed', 'newmanChannel'),
    film_transport: table(0.66, '1', 'fromMemory', 'wagner1949'),
  };
}

/** Inputs of all workings: the maker's own, the tables', the budget's medians, and earlier figures. */
export function workingInputsFor(
  setup: Answered,
  pairing: Pairing,
  budget: Budget,
  outcome: Outcome,
  field: SolvedField | null = null,
): WorkingInputs {
  const entries: Partial<Record<WorkingInputId, Omit<WorkingInput, 'id'>>> = { ...given(setup, pairing) };
  if (field) entries.solved_field = table(field.spacing * 1e3, 'mm', 'computed', 'fieldSolver');
  for (const id of inputIds) {
    const input = budget[id];
    entries[id] = { value: input.median, unit: input.unit, evidence: input.evidence, sources: input.sources };
  }
  for (const id of figureIds) {
    const value = outcome[id];
    if (value !== undefined)
      entries[id] = { value, unit: figureUnits[id], evidence: 'computed', sources: [] };
  }
  return Object.fromEntries(Object.entries(entries).map(([id, entry]) => [id, { id, ...entry }]));
}
