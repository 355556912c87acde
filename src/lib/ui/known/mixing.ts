import type { UnitId } from '../../core/units/convert.ts';
import { dilute, strengthByWeight, strengthen, topUp, weighingWith } from '$lib/core/chemistry/jars.ts';
import type { JarChange, FoundStrength } from '$lib/core/chemistry/jars.ts';
import { hydrometer, isRefused, mix, mixVolume, strongest } from '$lib/core/chemistry/solutions.ts';
import type { Known, Mixed, SolutionRefusal } from '$lib/core/chemistry/solutions.ts';
import { findSalt } from '$lib/core/facts/salts.ts';
import type { ShelfSalt } from '$lib/core/facts/salts.ts';
import type { Fault } from '$lib/core/plan/fault.ts';
import { toSi } from '$lib/core/units/convert.ts';
import { si } from '$lib/core/units/quantity.ts';
import type { Temperature } from '$lib/core/units/quantity.ts';
import { numberIn } from '$lib/core/units/typed-number.ts';
import { inward } from '$lib/core/units/typed.ts';
import { mixFaults, refusedQuantities } from '$words/known.ts';
import { withUnit } from '$words/units.ts';

/** The typed texts by field; empty where nothing was typed. */
export type MixDraft = Readonly<Record<MixField, string>>;

export const mixUnits = {
  'mix.salt': 'g',
  'mix.water': 'mL',
  'mix.strength': 'g/L',
  'mix.massPercent': '%',
  'mix.molarity': 'mol/L',
  'mix.temperature': 'degC',
  'mix.volume': 'mL',
  'mix.left': 'mL',
  'mix.wanted': 'g/L',
  'mix.weight': 'g',
  'mix.measured': 'mL',
} as const;
export type MixField = keyof typeof mixUnits;

/** Any two of these fields are enough, except two strengths. */
export const knownFields = [
  'mix.salt',
  'mix.water',
  'mix.strength',
  'mix.massPercent',
  'mix.molarity',
] as const satisfies readonly MixField[];

export interface Weighed {
  readonly massPercent: FoundStrength;
  readonly strength: FoundStrength;
}

/** Which calculation was asked for. */
export type MixWay = 'mix' | 'top' | 'change' | 'weigh';
export type MixAnswer =
  | { readonly kind: 'mix'; readonly of: Mixed }
  | { readonly kind: 'change'; readonly of: JarChange }
  | { readonly kind: 'weigh'; readonly of: Weighed };

export interface MixingFault {
  readonly field: MixField;
  readonly fault: Fault;
}
export type Answered<T> = { readonly value: T } | { readonly faults: readonly MixingFault[] };

const faultAt = (field: MixField, found: string, expected: string): MixingFault => ({
  field,
  fault: { path: field, found, expected },
});

/** Reads fields that must hold a number. A temperature may be below zero; an amount may not. */
function read<F extends MixField>(draft: MixDraft, fields: readonly F[]): Answered<Record<F, number>> {
  const faults: MixingFault[] = [];
  const value: Partial<Record<MixField, number>> = {};
  for (const field of fields) {
    const number = numberIn(draft[field]);
    if (number === null) faults.push(faultAt(field, draft[field].trim(), mixFaults.number));
    else if (field !== 'mix.temperature' && number <= 0)
      faults.push(faultAt(field, draft[field].trim(), mixFaults.above));
    else value[field] = number;
  }
  return faults.length > 0 ? { faults } : { value: value as Record<F, number> };
}

/** The most that a field of strength may hold, in its own unit. */
const mostIn: Readonly<Partial<Record<MixField, (top: Mixed) => number>>> = {
  'mix.strength': ({ strength }) => strength,
  'mix.wanted': ({ strength }) => strength,
  'mix.massPercent': ({ massPercent }) => massPercent,
  'mix.molarity': ({ molarity }) => molarity,
};

/** The context of a question: the typed texts, their fields, the salt and the temperature. */
interface Asked {
  readonly draft: MixDraft;
  /** Fields to which a refusal may be attached, the likeliest first. */
  readonly fields: readonly MixField[];
  readonly salt: ShelfSalt;
  readonly warmth: Temperature;
}

/**
 * A refusal of the core, attached to the field it concerns: what was found, the range, the nearest allowed
 * value.
 */
function refusal(refused: SolutionRefusal, { draft, fields, salt, warmth }: Asked): MixingFault {
  const first = fields[0] ?? 'mix.salt';
  const typed = (field: MixField): string => withUnit(draft[field].trim(), mixUnits[field]);
  if (refused.refused === 'needsAmount')
    return faultAt('mix.salt', mixFaults.twoStrengths, mixFaults.oneStrength);
  if (refused.refused === 'alreadyThere') return faultAt(first, typed(first), mixFaults.changes);
  if (refused.refused === 'noTable') return faultAt(first, typed(first), mixFaults.known);
  const within = (field: MixField, what: string, unit: UnitId, low: number, high: number): MixingFault => {
    const [least, most] = [inward(low, true), inward(high, false)];
    const nearest = withUnit(refused.found < refused.low ? least : most, unit);
    return faultAt(field, typed(field), mixFaults.within(what, least, withUnit(most, unit), nearest));
  };
  const { quantity, unit, low, high } = refused;
  if (quantity === 'temperature') return within('mix.temperature', '', unit, low, high);
  if (quantity === 'density')
    return within(first, refusedQuantities.density, 'g/cm3', hydrometer(low), hydrometer(high));
  // The solubility table and the density table end at different points; a value named as allowed must be in
  // both.
  const top = strongest(salt, warmth);
  const field = fields.find((one) => mostIn[one] !== undefined);
  if (top === null) return within(first, refusedQuantities[quantity], unit, low, high);
  return field === undefined
    ? within(first, refusedQuantities.strength, 'g/L', 0, top.strength)
    : within(field, '', mixUnits[field], 0, mostIn[field]?.(top) ?? high);
}

const answered = <T extends object>(answer: T | SolutionRefusal, asked: Asked): Answered<T> =>
  isRefused(answer) ? { faults: [refusal(answer, asked)] } : { value: answer };

const grams = (value: number) => toSi(value, 'g', 'mass');
const millilitres = (value: number) => toSi(value, 'mL', 'volume');
const celsius = (value: number) => toSi(value, 'degC', 'temperature');
const perLitre = (value: number) => si<'massConcentration'>(value);

/**
 * The salt with this form id.
 * @throws RangeError for an id that no list here offers
 */
export function saltOf(id: string): ShelfSalt {
  const salt = findSalt(id);
  if (salt === null) throw new RangeError(`salt "${id}" found, one of the shelf expected`);
  return salt;
}

/** Works out everything about a solution from the two fields that are filled in. */
function mixed(id: string, draft: MixDraft): Answered<Mixed> {
  const filled = knownFields.filter((field) => draft[field].trim() !== '');
  const [first, second] = filled;
  if (first === undefined || second === undefined || filled.length > 2) {
    return { faults: [faultAt('mix.salt', mixFaults.filled(filled.length), mixFaults.two)] };
  }
  const typed = read(draft, [first, second, 'mix.temperature']);
  if ('faults' in typed) return typed;
  const of = (field: MixField): number | undefined =>
    filled.some((one) => one === field)
      ? (typed.value as Partial<Record<MixField, number>>)[field]
      : undefined;
  const [salt, water, strength] = [of('mix.salt'), of('mix.water'), of('mix.strength')];
  const [massPercent, molarity] = [of('mix.massPercent'), of('mix.molarity')];
  const known: Known = {
    ...(salt === undefined ? {} : { salt: grams(salt) }),
    ...(water === undefined ? {} : { water: millilitres(water) }),
    ...(strength === undefined ? {} : { strength: perLitre(strength) }),
    ...(massPercent === undefined ? {} : { massPercent }),
    ...(molarity === undefined ? {} : { molarity }),
  };
  const bought = saltOf(id);
  const warmth = celsius(typed.value['mix.temperature']);
  return answered(mix(bought, known, warmth), { draft, fields: filled, salt: bought, warmth });
}

/** Works out how to change a jar to another strength, or to top up a bath to its line. */
function changed(id: string, way: 'top' | 'change', draft: MixDraft): Answered<JarChange> {
  const last = way === 'top' ? 'mix.left' : 'mix.wanted';
  const asked = ['mix.volume', 'mix.strength', last, 'mix.temperature'] as const;
  const typed = read(draft, asked);
  if ('faults' in typed) return typed;
  const { value } = typed;
  const salt = saltOf(id);
  const warmth = celsius(value['mix.temperature']);
  const strength = perLitre(value['mix.strength']);
  const before = mixVolume(salt, millilitres(value['mix.volume']), strength, warmth);
  if (isRefused(before))
    return { faults: [refusal(before, { draft, fields: ['mix.strength'], salt, warmth })] };
  const at: Asked = { draft, fields: [last], salt, warmth };
  if (way === 'top') return answered(topUp(salt, before, millilitres(value[last]), warmth), at);
  const wanted = perLitre(value['mix.wanted']);
  const change = wanted > strength ? strengthen : dilute;
  return answered(change(salt, before, wanted, warmth), at);
}

/**
 * Works out what a jar holds from the weight of a measured volume.
 * @param scale largest error of the scale, g
 * @param vessel largest error of the vessel, % of the volume
 */
function weighed(id: string, draft: MixDraft, scale: number, vessel: number): Answered<Weighed> {
  const asked = ['mix.weight', 'mix.measured', 'mix.temperature'] as const;
  const typed = read(draft, asked);
  if ('faults' in typed) return typed;
  const { value } = typed;
  const weighing = weighingWith(
    grams(value['mix.weight']),
    millilitres(value['mix.measured']),
    grams(scale),
    vessel,
  );
  const salt = saltOf(id);
  const warmth = celsius(value['mix.temperature']);
  return answered(strengthByWeight(salt, weighing, warmth), { draft, fields: ['mix.weight'], salt, warmth });
}

/**
 * Works out what was asked for from what was typed.
 * @param errors largest errors of scale (g) and vessel (% of the volume), for a jar that is weighed
 */
export function workOut(
  way: MixWay,
  id: string,
  draft: MixDraft,
  errors: { readonly scale: number; readonly vessel: number },
): Answered<MixAnswer> {
  if (way === 'mix') {
    const answer = mixed(id, draft);
    return 'faults' in answer ? answer : { value: { kind: 'mix', of: answer.value } };
  }
  if (way === 'weigh') {
    const answer = weighed(id, draft, errors.scale, errors.vessel);
    return 'faults' in answer ? answer : { value: { kind: 'weigh', of: answer.value } };
  }
  const answer = changed(id, way, draft);
  return 'faults' in answer ? answer : { value: { kind: 'change', of: answer.value } };
}
