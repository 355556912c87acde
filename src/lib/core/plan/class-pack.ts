import { limits, practice } from '../facts/limits.ts';
import { classFacts } from '../facts/class-facts.ts';
import { fromHours, toMinutes } from '../units/time.ts';
import { layOutOf } from './lay-out.ts';
import type { LayOutLine } from './lay-out.ts';
import type { FigureId } from './outcome.ts';
import type { Plan } from './plan.ts';

/*
 * The pack stops where one station's current turned to chlorine, with what is likely of the others, would
 * pass 10 ppm in the room; all of them at once is not planned for. Counts and minutes
 * (`core/facts/class-facts.ts`) are our own reading.
 */

/** What the teacher says of the class. */
export interface ClassAsked {
  readonly stations: number;
  /** learners at each */
  readonly learners: number;
  readonly adults: number;
  readonly minutes: number;
}

/** Bounds of each answer: a class beyond them is another kind of event. */
export const classBounds: Readonly<Record<keyof ClassAsked, readonly [least: number, most: number]>> = {
  stations: [1, 20],
  learners: [1, 6],
  adults: [1, 10],
  minutes: [30, 480],
};

export const classParts = ['welcome', 'masking', 'starting', 'biting', 'rinsing', 'clearing'] as const;
export type ClassPart = (typeof classParts)[number];

/** Why a class must not be held like this. */
export type ClassStop = 'refused' | 'nothing-planned' | 'room-unknown' | 'chlorine';

export interface ClassPack {
  readonly asked: ClassAsked;
  readonly people: number;
  readonly pieces: number;
  /** pairs of gloves, goggles, supplies */
  readonly gloves: number;
  readonly goggles: number;
  readonly supplies: number;
  readonly aprons: number;
  /** what to buy and lay out for all stations together */
  readonly needs: readonly LayOutLine[];
  /** one bath, and all of them: mL and g */
  readonly bathEach: { readonly water: number; readonly salt: number; readonly volume: number };
  readonly salt: number;
  /** L, if every bath and every rinse tub is handed over */
  readonly waste: number;
  /** mg/L at most, by element, in each bath afterwards */
  readonly dissolved: Readonly<Record<string, number>>;
  /** what all plates give off together: fresh air in m³/h and openings in cm²; null without hydrogen */
  readonly air: { readonly flow: number; readonly opening: number } | null;
  /** ppm in the room if one station's current turns to chlorine; null without chloride, or with a room unknown */
  readonly chlorine: number | null;
  /** min at least that the mixed baths stand until all is dissolved and clear */
  readonly standing: number;
  /** minutes from the beginning at which each part starts, and how long it takes */
  readonly parts: readonly { readonly id: ClassPart; readonly from: number; readonly minutes: number }[];
  /** minutes beyond those that there are; 0 when it fits */
  readonly over: number;
  /**
   * depth that could be bitten in the time there is, um, rounded down; null when the wanted one can, when none can,
   * and when the piece is to be bitten right through
   */
  readonly fittingDepth: number | null;
  readonly stops: readonly ClassStop[];
}

/** Two digits, and never more than there is time for. */
function roundedDown(um: number): number {
  const step = 10 ** (Math.floor(Math.log10(um)) - 1);
  return Number((Math.floor(um / step) * step).toPrecision(2));
}

const DISSOLVED = 'dissolved_metal.';

const partsOf = (asked: ClassAsked, bite: number): ClassPack['parts'] => {
  const { welcome, masking, startEach, lookEach, rinsing, clearing } = classFacts;
  const hands = Math.ceil(asked.stations / asked.adults);
  const lengths: Readonly<Record<ClassPart, number>> = {
    welcome: welcome.value,
    masking: masking.value,
    // one adult starts one supply after another
    starting: hands * startEach.value,
    biting: Math.ceil(bite) + hands * lookEach.value,
    rinsing: rinsing.value,
    clearing: clearing.value,
  };
  let from = 0;
  return classParts.map((id) => {
    const minutes = lengths[id];
    from += minutes;
    return { id, from: from - minutes, minutes };
  });
};

/**
 * A class in which every station does the same job: one metal, one salt, baths mixed beforehand.
 * @param plan of one station
 */
export function classPack(plan: Plan, asked: ClassAsked): ClassPack {
  const { stations, learners, adults } = asked;
  const valueOf = (id: FigureId): number => plan.figures[id]?.value ?? 0;
  const highOf = (id: FigureId): number => plan.figures[id]?.high ?? 0;
  const people = stations * learners + adults;
  const bite = plan.settings?.minutes.value ?? 0;
  const parts = partsOf(asked, bite);
  const over = Math.max(0, parts.reduce((sum, { minutes }) => sum + minutes, 0) - asked.minutes);
  // the time goes with the depth
  const fitting =
    bite > over && !plan.job.piece.through
      ? roundedDown(plan.job.piece.depth * 1e6 * ((bite - over) / bite))
      : null;
  const each = {
    water: valueOf('water_volume'),
    salt: valueOf('salt_mass'),
    volume: valueOf('bath_volume'),
  };
  const worst = plan.figures.chlorine_worst_case;
  const chlorine = worst ? worst.high + (stations - 1) * highOf('chlorine_likely') : null;
  return {
    asked,
    people,
    pieces: stations * plan.job.piece.count,
    gloves: people * classFacts.pairsEach.value,
    goggles: people + classFacts.spareGoggles.value,
    supplies: stations,
    aprons: people,
    needs: layOutOf(plan, stations),
    bathEach: each,
    salt: stations * each.salt,
    waste: stations * (each.volume / 1e3 + classFacts.rinseEach.value),
    dissolved: Object.fromEntries(
      Object.entries(plan.figures).flatMap(([id, figure]) =>
        id.startsWith(DISSOLVED) ? [[id.slice(DISSOLVED.length), figure.high] as const] : [],
      ),
    ),
    air: plan.figures.hydrogen_air
      ? { flow: stations * highOf('hydrogen_air'), opening: stations * highOf('hydrogen_opening') }
      : null,
    chlorine,
    standing: toMinutes(fromHours(practice.dissolveHours.value)),
    parts,
    over,
    fittingDepth: over > 0 ? fitting : null,
    stops: [
      ...(plan.refusals.length > 0 ? (['refused'] as const) : []),
      ...(plan.refusals.length === 0 && !plan.settings ? (['nothing-planned'] as const) : []),
      ...(plan.cautions.some(({ rule }) => rule === 'chlorine-room-unknown')
        ? (['room-unknown'] as const)
        : []),
      ...(chlorine !== null && chlorine > limits.chlorineDanger.value ? (['chlorine'] as const) : []),
    ],
  };
}
