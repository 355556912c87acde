import { countryOf } from '../facts/countries.ts';
import * as v from 'valibot';
import { toJsonSchema } from '@valibot/to-json-schema';
import type { Attachment, Cathode, Hanger, Piece, Setup, Supply, Tub } from '../cell/setup.ts';
import { cathodeNames } from '../facts/electrode-facts.ts';
import { isBitable, metalNames, metals, refusedMetals } from '../facts/metals.ts';
import type { BitableMetal, RefusedMetal } from '../facts/metals.ts';
import { boughtSaltIds, canonicalSalt, refusedSalts } from '../facts/salts.ts';
import { resistNames } from '../facts/resists.ts';
import type { ResistKind } from '../facts/resists.ts';
import { inTypedUnit } from '../job/amount.ts';
import { attachments, equipment } from '../job/choices.ts';
import type { JobField } from '../job/field-kinds.ts';
import { fieldRows, jobFields, valueAt } from '../job/fields.ts';
import type { JobPath } from '../job/fields.ts';
import type { ReadingUnits } from '../job/reading-units.ts';
import type { LearntCell } from '../learn/cell-line.ts';
import { significant } from '../units/format.ts';
import { si } from '../units/quantity.ts';
import type { Dimension, Quantity } from '../units/quantity.ts';
import { shown } from './fault.ts';
import type { Fault } from './fault.ts';
import { jobSchema } from './job-schema.ts';
import type { TypedJob } from './job-schema.ts';
import { schemaFault, tubSizes } from './schema-fault.ts';

/** A job as it is planned: everything in SI, names made plain. */
export interface JobInput extends Setup {
  readonly title: string;
  readonly paper: 'A4' | 'Letter';
  /** absent only from plans stored before it existed: read it with `readingUnitsOf` */
  readonly units?: ReadingUnits;
  /** what is on the piece, and must be taken off or covered with resist */
  readonly attached: readonly Attachment[];
  /** null when nobody said */
  readonly hanger: Hanger | null;
  /** null before the first job of this pairing, or where the maker wants the tables alone */
  readonly bench: Bench | null;
  /** fields whose value nobody typed: left at the default, or proposed; absent from plans stored before it existed */
  readonly untyped?: readonly JobPath[];
}

/** What this bench's own jobs have taught; null for what they have not. */
export interface Bench {
  readonly biteRate: {
    /** of what Faraday's law gives */
    readonly median: number;
    /** of its logarithm, one standard deviation */
    readonly spread: number;
    readonly jobs: number;
  } | null;
  readonly cell: LearntCell | null;
  /** share of the tables' current that passes where no amps are shown; absent from plans stored before it existed */
  readonly pace?: { readonly median: number; readonly spread: number; readonly jobs: number } | null;
}

export type ParsedJob = { readonly job: JobInput } | { readonly faults: readonly Fault[] };

/** Looks a typed metal up; null when nobody here knows it. */
function metalNamed(typed: string): BitableMetal | RefusedMetal | null {
  const plain = typed.trim();
  if (isBitable(plain) || Object.hasOwn(refusedMetals, plain)) return plain as BitableMetal | RefusedMetal;
  return (Object.hasOwn(metalNames, plain) ? metalNames[plain] : undefined) ?? null;
}

const knownMetals = (): string =>
  [...Object.keys(metals), ...Object.keys(metalNames), ...Object.keys(refusedMetals)].join(', ');

/** Width and height of the rectangle that stands for the piece, and the metal of one face. */
function outline(piece: TypedJob['piece']) {
  if (piece.shape === 'disc') {
    const area = (Math.PI / 4) * piece.diameter ** 2;
    return { width: si<'length'>(Math.sqrt(area)), height: si<'length'>(Math.sqrt(area)), area };
  }
  const [width, height] = piece.shape === 'band' ? [piece.length, piece.width] : [piece.width, piece.height];
  return { width, height, area: width * height };
}

/** An amount in the unit that its field was typed in. */
const asTyped =
  (file: unknown) =>
  (path: JobPath, value: Quantity<Dimension>): string => {
    const { unit } = valueAt(file, path) as { readonly unit: string };
    const { unit: other = 'mm' }: JobField = jobFields[path];
    return inTypedUnit(value, unit, other, (number) => significant(number, 4));
  };

function pieceOf(
  typed: TypedJob['piece'],
  areaLater: boolean,
  told: ReturnType<typeof asTyped>,
  faults: Fault[],
): Piece | null {
  const metal = metalNamed(typed.metal);
  if (metal === null)
    faults.push({ path: 'piece.metal', found: shown(typed.metal), expected: `one of ${knownMetals()}` });
  const { width, height, area } = outline(typed);
  const faceArea = area * (typed.faces === 'both' ? 2 : 1);
  const { openArea, openShare } = typed;
  if (openArea !== undefined && openShare !== undefined) {
    faults.push({
      path: 'piece.openShare',
      found: shown(openShare),
      expected: 'openArea or openShare, not both',
    });
  }
  if (openArea === undefined && openShare === undefined && !areaLater) {
    faults.push({
      path: 'piece.openArea',
      found: 'nothing',
      expected: 'the bare area, or piece.openShare from 0 to 1',
    });
  }
  if (openArea !== undefined && openArea > faceArea * (1 + 1e-9)) {
    faults.push({
      path: 'piece.openArea',
      found: told('piece.openArea', openArea),
      expected: `at most ${told('piece.openArea', si<'area'>(faceArea))}, the bitten faces of one piece`,
    });
  }
  if (typed.depth > typed.thickness) {
    faults.push({
      path: 'piece.depth',
      found: told('piece.depth', typed.depth),
      expected: `at most the thickness, ${told('piece.depth', typed.thickness)}`,
    });
  }
  if (metal === null) return null;
  return {
    metal,
    shape: typed.shape,
    width,
    height,
    thickness: typed.thickness,
    faces: typed.faces,
    faceArea: si<'area'>(faceArea),
    openArea: openArea ?? (openShare === undefined ? null : si<'area'>(openShare * faceArea)),
    openAreaFrom: openArea !== undefined ? 'area' : openShare !== undefined ? 'share' : 'later',
    depth: typed.depth,
    count: typed.count,
    through: typed.through,
    at: typed.at ?? null,
    design: typed.design ?? null,
  };
}

function cathodeOf(typed: TypedJob['cathode'], faults: Fault[]): Cathode | null {
  const plain = typed.metal.trim();
  const metal = (Object.hasOwn(cathodeNames, plain) ? cathodeNames[plain] : undefined) ?? metalNamed(plain);
  if (metal !== null) return { ...typed, metal };
  faults.push({
    path: 'cathode.metal',
    found: shown(typed.metal),
    expected: `stainless or one of ${knownMetals()}`,
  });
  return null;
}

function tubOf(typed: TypedJob['tub'], faults: Fault[]): Tub | null {
  const { length, width, diameter, fill, waterByJug } = typed;
  const given = Object.keys(typed).filter((key) => typed[key as keyof typeof typed] !== undefined);
  const only = (...names: string[]) =>
    given.length === names.length && names.every((name) => given.includes(name));
  if (only('length', 'width', 'fill')) {
    return { kind: 'box', length, width, fill } as Tub;
  }
  if (only('diameter', 'fill')) return { kind: 'round', diameter, fill } as Tub;
  if (only('waterByJug')) return { kind: 'jug', water: waterByJug } as Tub;
  faults.push({
    path: 'tub',
    found: given.length === 0 ? 'nothing' : given.join(', '),
    expected: tubSizes,
  });
  return null;
}

function supplyOf(typed: TypedJob['supply']): Supply {
  const base = {
    kind: typed.kind,
    showsAmps: typed.showsAmps ?? (typed.control === 'amps' || typed.kind === 'bench'),
    leads: typed.leads ?? null,
  };
  return typed.control === 'volts'
    ? { ...base, control: 'volts', volts: typed.volts, maxAmps: typed.maxAmps ?? null }
    : { ...base, control: 'amps', amps: typed.amps, maxVolts: typed.maxVolts };
}

/** Fields that a file leaves at their usual value, or says that nobody typed. */
const nobodyTyped = (file: unknown, listed: readonly JobPath[]): readonly JobPath[] =>
  fieldRows.flatMap(([path, { fallback }]) =>
    listed.includes(path) || (fallback !== undefined && valueAt(file, path) === undefined) ? [path] : [],
  );

/**
 * Reads a job file.
 * @param unknown what JSON.parse gave
 * @param areaLater the bare area may still be missing, as on screen before masking
 * @returns the job, or every fault found
 */
export function parseJob(unknown: unknown, { areaLater = false } = {}): ParsedJob {
  const result = v.safeParse(jobSchema, unknown);
  if (!result.success) return { faults: result.issues.map(schemaFault) };
  const typed = result.output;
  const faults: Fault[] = [];
  const piece = pieceOf(typed.piece, areaLater, asTyped(unknown), faults);
  const cathode = cathodeOf(typed.cathode, faults);
  const tub = tubOf(typed.tub, faults);
  const salt = canonicalSalt(typed.bath.salt);
  if (salt === null) {
    const known = [...boughtSaltIds, ...Object.keys(refusedSalts)].join(', ');
    faults.push({ path: 'bath.salt', found: shown(typed.bath.salt), expected: `one of ${known}` });
  }
  if (piece === null || cathode === null || tub === null || salt === null || faults.length > 0)
    return { faults };
  const { place, resist } = typed;
  const known = Object.hasOwn(resistNames, resist.kind) ? resistNames[resist.kind] : undefined;
  return {
    job: {
      title: typed.title,
      paper: typed.paper,
      units: typed.units,
      attached: attachments.filter((thing) => typed.piece.attached.includes(thing)),
      hanger: typed.hanger ?? null,
      workshop: {
        has: equipment.filter((thing) => typed.workshop.has.includes(thing)),
        scale: typed.workshop.scale ?? null,
        ...(typed.workshop.supply === undefined ? {} : { supply: typed.workshop.supply }),
      },
      bench: typed.bench
        ? {
            biteRate: typed.bench.biteRate ?? null,
            cell: typed.bench.cell ?? null,
            ...(typed.bench.pace ? { pace: typed.bench.pace } : {}),
          }
        : null,
      untyped: nobodyTyped(unknown, typed.untyped),
      piece,
      cathode,
      tub,
      bath: {
        ...typed.bath,
        salt,
        // a blank name means no bath from the shelf
        record: typed.bath.record?.trim() === '' ? null : (typed.bath.record ?? null),
        dissolved: Object.fromEntries(
          Object.entries(typed.bath.dissolved).filter(([, amountOf]) => amountOf !== undefined),
        ),
      },
      resist: known ?? (resist.kind as ResistKind),
      supply: supplyOf(typed.supply),
      place: {
        use: place.use,
        room: place.room ?? null,
        ...(place.openings === undefined ? {} : { openings: place.openings }),
        country: place.country === undefined ? null : countryOf(place.country),
        mayTreat: place.authorityAllowsTreatment,
      },
    },
  };
}

/** The job file's JSON Schema, for editors and for other programs. */
export const jobJsonSchema = (): object => ({
  ...toJsonSchema(jobSchema, { typeMode: 'input', errorMode: 'ignore' }),
  title: 'Etchwright job file, version 1',
});
