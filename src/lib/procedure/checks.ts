import type { UnitId } from '../core/units/convert.ts';
import { isBitable, metals } from '../core/facts/metals.ts';
import { isResist, resistFacts } from '../core/facts/resists.ts';
import { hasKnobs, supplyKindOf } from '../core/facts/supplies.ts';
import type { CheckBasis } from './check-basis.ts';

/*
 * The right option of a check stands first, second or third, so that it has to be read; its place never
 * changes between jobs, so that it can be found.
 */

/** The four pauses that cannot be walked past. */
export const holdIds = ['mixing', 'power', 'lifting', 'storing'] as const;
export type HoldId = (typeof holdIds)[number];

/** What can be seen, by id, and whether the work may go on then. */
type Options = Readonly<Record<string, boolean>>;

/** One thing that can be seen. */
export type Option<O extends Options = Options> = {
  readonly [Id in keyof O & string]: { readonly id: Id; readonly ok: O[Id] };
}[keyof O & string];

interface CheckBase<Id extends string> {
  readonly id: Id;
  readonly hold: HoldId;
  /** asked anew after a pause or a reload */
  readonly critical: boolean;
  /** asked anew after every stop: a look can have changed it */
  readonly changedByStop: boolean;
  /** input paths whose change makes an answer stale; a path covers everything under it */
  readonly inputs: readonly string[];
  /** figures, as shown, whose change makes an answer stale */
  readonly figures: readonly string[];
  /** left out where it cannot apply */
  readonly when?: (basis: CheckBasis) => boolean;
}

export interface ChoiceCheck<Id extends string = string, O extends Options = Options> extends CheckBase<Id> {
  readonly kind: 'choice';
  readonly options: readonly Option<O>[];
}

export interface NumberCheck<Id extends string = string> extends CheckBase<Id> {
  readonly kind: 'number';
  readonly unit: UnitId;
  readonly isOk: (value: number, basis: CheckBasis) => boolean;
}

/** Two who have looked, in a class: two sets of letters that differ, with a space between. */
export interface InitialsCheck<Id extends string = string> extends CheckBase<Id> {
  readonly kind: 'initials';
}

const choice = <Id extends string, const O extends Options>(
  hold: HoldId,
  id: Id,
  options: O,
  rest: Partial<Pick<ChoiceCheck, 'critical' | 'changedByStop' | 'inputs' | 'figures' | 'when'>> = {},
): ChoiceCheck<Id, O> => ({
  kind: 'choice',
  id,
  hold,
  critical: false,
  changedByStop: false,
  inputs: [],
  figures: [],
  options: Object.entries(options).map(([option, ok]) => ({
    id: option,
    ok,
  })) as unknown as readonly Option<O>[],
  ...rest,
});

const critical = { critical: true } as const;
/** Undone by a pause, and by the look that a stop is made for. */
const lookedAtAnew = { critical: true, changedByStop: true } as const;
/** The word that a choice was answered with; undefined when there is none. */
const wordIn = ({ inputs }: CheckBasis, path: string): string | undefined =>
  /^"(.*)"$/.exec(inputs[path] ?? '')?.[1];

/** Only silver leaves a crust that explodes. A metal that the tables do not name may be silver. */
const mayLeaveCrust = (basis: CheckBasis): boolean => {
  const metal = wordIn(basis, 'piece.metal');
  return metal === undefined || !isBitable(metal) || metals[metal].family === 'silver';
};
/** A resist that the tables do not name may need a solvent. */
const mayNeedSolvent = (basis: CheckBasis): boolean => {
  const resist = wordIn(basis, 'resist');
  return resist === undefined || !isResist(resist) || resistFacts[resist].remover !== null;
};
/** Only a plate with chromium in it can colour a bath with chromate; one of unknown metal may hold some. */
const mayHoldChromate = (basis: CheckBasis): boolean => {
  const plate = wordIn(basis, 'cathode.metal');
  return plate === undefined || plate === 'stainless';
};
const isNewBath = ({ inputs }: CheckBasis): boolean => inputs['bath.record'] === 'null';
const isShelfBath = (basis: CheckBasis): boolean => !isNewBath(basis);
const isClass = (basis: CheckBasis): boolean => wordIn(basis, 'place.use') === 'teaching';
const isSetByHand = (basis: CheckBasis): boolean =>
  hasKnobs(supplyKindOf(wordIn(basis, 'supply.kind') ?? ''));
const hasMultimeter = ({ inputs }: CheckBasis): boolean =>
  inputs['workshop.has']?.includes('"multimeter"') ?? false;
const isBattery = (basis: CheckBasis): boolean => wordIn(basis, 'supply.kind') === 'battery';
/** A scale is coarse: a reading so much over what was planned is the same. */
const isAtMost = (value: number, most: number, coarse: number): boolean =>
  value > 0 && most > 0 && value <= most + coarse;

/** Closes a hold in a class: two people confirm what the critical checks depend on. */
const initials = <Hold extends HoldId>(
  hold: Hold,
  inputs: readonly string[] = [],
): InitialsCheck<`initials-${Hold}`> => ({
  kind: 'initials',
  id: `initials-${hold}`,
  hold,
  critical: true,
  // an adult has a hand on the supply at every start
  changedByStop: hold === 'power',
  inputs: [...inputs, 'place.use'],
  figures: [],
  when: isClass,
});

/**
 * Every check, in the order asked; the gravest of each hold first. An option says what is seen, never
 * "OK", and the right one stands in no fixed place, so that the eye has to read. Texts are in the words room.
 */
const table = [
  choice('mixing', 'goggles-for-salt', { 'on-bench': false, 'on-eyes': true, none: false }, critical),
  choice('mixing', 'gloves-for-salt', { torn: false, off: false, 'on-whole': true }, critical),
  choice(
    'mixing',
    'rim',
    { crust: false, clean: true, 'not-sure': false },
    { ...critical, inputs: ['bath.record', 'piece.metal'], when: isShelfBath },
  ),
  choice(
    'mixing',
    'bath-smell',
    { ammonia: false, nothing: true, pool: false },
    { ...critical, inputs: ['bath.record'], when: isShelfBath },
  ),
  choice(
    'mixing',
    'jar-says',
    { 'this-salt': true, 'other-salt': false, 'no-label': false },
    { ...critical, inputs: ['bath.salt'], when: isNewBath },
  ),
  choice(
    'mixing',
    'bath-is',
    { 'the-one': true, another: false },
    { ...critical, inputs: ['bath.record'], when: isShelfBath },
  ),
  choice(
    'mixing',
    'tub-holds',
    { 'something-else': false, clean: true },
    { inputs: ['bath.water', 'tub'], figures: ['water_volume'], when: isNewBath },
  ),
  choice('mixing', 'under-tub', { table: false, tray: true }),
  choice('mixing', 'food-flame-children', { near: false, away: true }),
  initials('mixing', ['bath.salt', 'bath.record']),

  choice('power', 'dressed', { 'goggles-off': false, ready: true, ring: false }, critical),
  choice(
    'power',
    'air',
    { closed: false, open: true, covered: false, outdoors: true },
    { inputs: ['bath.salt', 'place'], figures: ['hydrogen'] },
  ),
  choice(
    'power',
    'supply-stands',
    { above: false, beside: true, 'lead-drips': false },
    { inputs: ['supply.kind', 'workshop.supply'] },
  ),
  choice(
    'power',
    'fuse',
    { none: false, 'in-plus': true, 'small-block': true },
    { inputs: ['supply', 'workshop.supply'], when: isBattery },
  ),
  choice(
    'power',
    'mask-holds',
    { gaps: false, whole: true },
    { inputs: ['resist', 'piece.depth', 'hanger', 'piece.attached'] },
  ),
  choice(
    'power',
    'supply-label',
    { more: false, 'as-planned': true, 'cannot-read': false },
    {
      ...critical,
      inputs: ['supply', 'workshop.supply', 'bath', 'piece', 'cathode'],
      figures: ['volts'],
      when: (b) => !isSetByHand(b),
    },
  ),
  {
    kind: 'number',
    id: 'volts-knob',
    hold: 'power',
    critical: true,
    changedByStop: false,
    unit: 'V',
    inputs: ['supply', 'bath', 'piece', 'cathode'],
    figures: ['current', 'volts', 'charge', 'run_time'],
    when: isSetByHand,
    isOk: (value, { mostVolts }) => isAtMost(value, mostVolts, 0.1),
  },
  {
    kind: 'number',
    id: 'amps-knob',
    hold: 'power',
    critical: false,
    changedByStop: false,
    unit: 'A',
    inputs: ['supply', 'bath', 'piece', 'cathode'],
    figures: ['current', 'volts', 'charge', 'run_time'],
    when: (basis) => isSetByHand(basis) && basis.mostAmps > 0,
    isOk: (value, { mostAmps }) => isAtMost(value, mostAmps, Math.max(0.05, mostAmps / 10)),
  },
  choice(
    'power',
    'between',
    { touching: false, 'clear-dry': true, 'clip-wet': false },
    { ...lookedAtAnew, inputs: ['piece', 'cathode', 'tub'] },
  ),
  choice(
    'power',
    'meter-sign',
    { minus: false, 'no-minus': true, 'not-sure': false, 'not-here': true },
    {
      inputs: ['supply.kind', 'workshop.supply', 'piece.metal', 'cathode.metal', 'workshop.has'],
      when: hasMultimeter,
    },
  ),
  choice(
    'power',
    'piece-clip',
    { minus: false, plus: true, 'not-sure': false },
    // another supply is wired anew
    { ...lookedAtAnew, inputs: ['piece.metal', 'cathode.metal', 'supply.kind', 'workshop.supply'] },
  ),
  initials('power', ['supply', 'bath', 'piece', 'cathode', 'tub']),

  choice('lifting', 'hands', { fingers: false, 'gloves-tongs': true, torn: false }, lookedAtAnew),
  choice('lifting', 'goggles-lifting', { off: false, 'on-eyes': true }, critical),
  choice('lifting', 'first-rinse', { 'filled-beside': true, 'not-yet': false }),
  choice('lifting', 'flame-near', { some: false, none: true }, { inputs: ['resist'], when: mayNeedSolvent }),
  initials('lifting'),

  choice(
    'storing',
    'smell',
    { ammonia: false, pool: false, nothing: true },
    { ...critical, inputs: ['bath.salt', 'piece.metal'] },
  ),
  choice(
    'storing',
    'colour',
    { yellow: false, 'clear-blue-green': true, 'brown-orange': true, 'not-sure': false },
    { ...critical, inputs: ['cathode.metal', 'piece.metal'], when: mayHoldChromate },
  ),
  choice(
    'storing',
    'crust',
    { 'grey-or-none': true, 'black-soft': true, 'black-hard': false },
    { ...critical, inputs: ['piece.metal'], when: mayLeaveCrust },
  ),
  choice(
    'storing',
    'label-says',
    { another: false, 'this-bath': true, 'no-label': false },
    {
      inputs: ['bath.salt', 'piece.metal'],
      figures: ['Ag', 'Cu', 'Zn', 'Sn', 'Ni', 'Pb', 'Fe'].map((metal) => `dissolved_metal.${metal}`),
    },
  ),
  choice('storing', 'container', { food: false, 'not-food': true }, { when: isNewBath }),
  initials('storing', ['bath.salt', 'piece.metal', 'cathode.metal']),
] as const satisfies readonly (ChoiceCheck | NumberCheck | InitialsCheck)[];

type Row = (typeof table)[number];
export type CheckId = Row['id'];
type OptionOf<Id extends CheckId> =
  Extract<Row, { readonly id: Id }> extends { readonly options: readonly (infer O)[] } ? O : never;
/** What can be seen at a check; nothing at one that is read off a scale or signed. */
export type OptionId<Id extends CheckId> = Id extends CheckId
  ? Extract<OptionOf<Id>, { readonly id: string }>['id']
  : never;
/** An answer that does not let the work go on: an option, or the kind of a check that has none. */
export type WrongId<Id extends CheckId> = Id extends CheckId
  ? | Extract<OptionOf<Id>, { readonly id: string; readonly ok: false }>['id']
    | Exclude<Extract<Row, { readonly id: Id }>['kind'], 'choice'>
  : never;

export type Check =
  | ChoiceCheck<CheckId, Readonly<Record<OptionId<CheckId>, boolean>>>
  | NumberCheck<CheckId>
  | InitialsCheck<CheckId>;

export const checks: readonly Check[] = table;

const byId: ReadonlyMap<string, Check> = new Map(checks.map((check) => [check.id, check]));

/** @throws RangeError for an id that no check has */
export function checkNamed(id: CheckId): Check {
  const check = byId.get(id);
  if (!check) throw new RangeError(`check "${id}" found, one of ${[...byId.keys()].join(', ')} expected`);
  return check;
}

/** Checks of a hold that apply to this job, in order. */
export const checksOf = (hold: HoldId, basis: CheckBasis): readonly Check[] =>
  checks.filter((check) => check.hold === hold && (check.when?.(basis) ?? true));

const LETTERS = /^\p{Lu}{1,4}$/u;

/** Whether the initials can belong to two different people. */
function areTwo(value: string | number): boolean {
  const sets = String(value).split(' ');
  return sets.length === 2 && sets.every((one) => LETTERS.test(one)) && sets[0] !== sets[1];
}

/** Whether an answer is one that lets the work go on. */
export function isOk(check: Check, value: string | number, basis: CheckBasis): boolean {
  if (check.kind === 'initials') return areTwo(value);
  return check.kind === 'number'
    ? typeof value === 'number' && check.isOk(value, basis)
    : check.options.some(({ id, ok }) => ok && id === value);
}
