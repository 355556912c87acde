import fc from 'fast-check';
import type { Arbitrary } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cathodeNames } from '../../src/lib/core/facts/electrode-facts.ts';
import { metalIds, saltIds } from '../../src/lib/core/job/choices.ts';
import { blankDraft, isAsked, unitIn } from '../../src/lib/core/job/draft.ts';
import type { Draft } from '../../src/lib/core/job/draft.ts';
import type { JobField } from '../../src/lib/core/job/field-kinds.ts';
import { fieldIdOf, fieldRows, valueAt } from '../../src/lib/core/job/fields.ts';
import type { JobPath } from '../../src/lib/core/job/fields.ts';
import { parseJob } from '../../src/lib/core/plan/job-input.ts';
import type { JobInput } from '../../src/lib/core/plan/job-input.ts';
import { fromSi, toSi } from '../../src/lib/core/units/convert.ts';
import type { UnitSymbol } from '../../src/lib/core/units/convert.ts';
import type { Dimension } from '../../src/lib/core/units/quantity.ts';
import { readJobCode, jobCode } from '../../src/lib/link/job-code.ts';
import { jobFileOf } from '../../src/lib/session/job-file.ts';
import { draftOf } from '../../src/lib/session/jobs-from-plan.ts';
import { arbitraryJob } from './arbitrary-job.ts';
import { chunk } from './runs.ts';

/**
 * One law over the table of fields: what a draft says comes back, through job file, plan and printed code, or the
 * table says why it does not.
 */

const pick = <T>(...values: readonly T[]): Arbitrary<T> => fc.constantFrom(...values);
const digits = (value: number): number => Number(value.toPrecision(5));

/** Narrower than the table where fields bound one another: an area fits its face, a depth its sheet. */
const bounds: Partial<Record<JobPath, readonly [number, number]>> = {
  'piece.width': [10, 900],
  'piece.height': [10, 900],
  'piece.length': [10, 900],
  'piece.diameter': [10, 900],
  'piece.thickness': [1, 49],
  'piece.depth': [0.001, 0.9],
  'piece.openArea': [0.001, 0.7],
};

/** A number inside the field's bounds, typed in its unit. */
function typedNumber(path: JobPath, row: JobField & { max?: number }, unit: string): Arbitrary<string> {
  const [least, most] = bounds[path] ?? [(row.min ?? 0) + 0.01, (row.max ?? 1000) * 0.99];
  const { unit: own, dimension } = row as { unit: UnitSymbol; dimension: Dimension };
  return fc
    .double({ min: least, max: most, noNaN: true })
    .map((value) => String(digits(fromSi(toSi(value, own, dimension), unit as UnitSymbol))));
}

const design = fc
  .tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 8 }))
  .chain(([columns, rows]) =>
    fc
      .array(pick(...Array.from('0123456789abcdef')), {
        minLength: columns * rows,
        maxLength: columns * rows,
      })
      .map((cells) => JSON.stringify({ columns, rows, cells: `${cells.slice(1).join('')}f` })),
  );

const texts: Partial<Record<JobPath, Arbitrary<string>>> = {
  title: fc.stringMatching(/^[A-Za-z][a-z ]{0,20}[a-z]$/),
  'piece.metal': pick(...metalIds),
  'piece.design': design,
  'cathode.metal': pick('same', ...metalIds),
  'cathode.size': pick('same', 'own'),
  'bath.salt': pick(...saltIds),
  'bath.from': pick('new', 'shelf'),
  'bath.record': pick('', 'SILVER 1', 'COPPER 2'),
  'place.country': pick('', 'NZ', 'DE'),
  'piece.purpose': pick('patina', 'number'),
  'piece.polish': pick('0', '0.02', '0.05'),
};

function textFor(path: JobPath, row: JobField, units: Draft): Arbitrary<string> {
  const own = texts[path];
  if (own !== undefined) return own;
  const blankToo = (one: Arbitrary<string>): Arbitrary<string> =>
    row.optional && !row.when ? fc.oneof(one, fc.constant('')) : one;
  const unit = unitIn(row, units);
  switch (row.kind) {
    case 'word':
      return blankToo(pick(...(row.of ?? [])));
    case 'words':
      return fc.subarray([...(row.of ?? [])]).map((chosen) => chosen.join(' '));
    case 'flag':
      return pick('yes', 'no');
    case 'count':
      return fc.integer({ min: 1, max: 100 }).map(String);
    case 'share':
      return fc.double({ min: 0.1, max: 100, noNaN: true }).map((value) => String(digits(value)));
    case 'amount':
      return blankToo(typedNumber(path, row, unit));
    case 'point':
      return blankToo(
        fc
          .tuple(fc.integer({ max: 900, min: 0 }), fc.integer({ max: 900, min: 1 }))
          .map((at) => at.join(' ')),
      );
    case 'metals':
      return fc
        .dictionary(pick(...(row.of ?? [])), fc.double({ min: 0.01, max: 5000, noNaN: true }).map(digits), {
          maxKeys: 15,
        })
        .map((held) => (Object.keys(held).length === 0 ? '' : JSON.stringify(held)));
    default:
      return fc.constant(row.blank ?? '');
  }
}

/** Every field as somebody may have typed it, so that the job parses. */
const anyDraft: Arbitrary<Draft> = fc
  .record({
    'unit.length': pick('mm', 'cm', 'in'),
    'unit.temperature': pick('degC', 'degF'),
    'piece.thickness.unit': pick('mm', 'in'),
    'piece.depth.unit': pick('mm', 'in'),
    'piece.openArea.unit': pick('cm2', 'in2'),
  })
  .chain((units) => {
    const said = { ...blankDraft, ...units };
    const rows = fieldRows.flatMap(([path, row]) => {
      const id = fieldIdOf(path);
      return id === null || id in units ? [] : [[id, textFor(path, row, said)] as const];
    });
    return fc.record(Object.fromEntries(rows)).map((draft) => ({ ...said, ...draft }));
  });

function jobOf(file: unknown): JobInput {
  const parsed = parseJob(file, { areaLater: true });
  if ('faults' in parsed) throw new Error(JSON.stringify(parsed.faults));
  return parsed.job;
}

function carried(job: JobInput): JobInput {
  const read = readJobCode(jobCode(job));
  if ('fault' in read) throw new Error(read.fault);
  return read.job;
}

/** What a file says, amounts in SI, words in no order. */
function plainly(value: unknown): unknown {
  if (Array.isArray(value)) return [...(value as string[])].sort();
  if (typeof value !== 'object' || value === null) return value;
  const { value: number, unit } = value as { value?: number; unit?: string };
  if (typeof number === 'number' && typeof unit === 'string') {
    for (const [, row] of fieldRows) {
      try {
        if (row.dimension) return toSi(number, unit, row.dimension);
      } catch {
        // of another dimension
      }
    }
  }
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plainly(inner)]));
}

/** The same, but for the last of the six digits that a draft and a code keep. */
function isSame(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= 1e-4 * Math.max(Math.abs(a), Math.abs(b));
  if (typeof a !== 'object' || a === null || typeof b !== 'object' || b === null) return a === b;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((key) => isSame(valueAt(a, key), valueAt(b, key)));
}

/** Paths whose value a draft says, and another does not say alike. */
function lost(before: Draft, after: Draft, goes: (row: JobField) => boolean): readonly JobPath[] {
  const files = [before, after].map((draft) => ({ draft, file: jobFileOf(draft) }));
  return fieldRows.flatMap(([path, row]) => {
    const id = fieldIdOf(path);
    if (id === null || !goes(row)) return [];
    const [was, is] = files.map(({ draft, file }) => {
      const said = row.schema ? plainly(valueAt(file, path)) : draft[id];
      // one plate under two names
      return path === 'cathode.metal' ? (cathodeNames[String(said)] ?? said) : said;
    });
    return isSame(was, is) ? [] : [path];
  });
}

describe('what a draft says', () => {
  test('reaches the job file, whatever is asked and answered', () => {
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const file = jobFileOf(draft);
        for (const [path, row] of fieldRows) {
          const id = fieldIdOf(path);
          if (!row.schema || id === null || !isAsked(row, draft) || draft[id] === '') continue;
          expect(valueAt(file, path), path).not.toBeUndefined();
        }
      }),
      chunk(60),
    );
  });

  test('comes back from its job file and its plan', () => {
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const back = draftOf(jobOf(jobFileOf(draft)));
        expect(lost(draft, back, ({ schema, stays }) => schema !== undefined || stays === undefined)).toEqual(
          [],
        );
      }),
      chunk(60),
    );
  });

  test('comes back from a printed code, but for what the table says stays behind', () => {
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const back = draftOf(carried(jobOf(jobFileOf(draft))));
        expect(lost(draft, back, ({ stays }) => stays === undefined)).toEqual([]);
      }),
      chunk(60),
    );
  });
});

test('what stays behind says why', () => {
  for (const [path, { stays }] of fieldRows)
    if (stays !== undefined) expect(stays.length, path).toBeGreaterThan(15);
});

/** Parts of a planned job that are no field of the table, and why a draft of it is without them. */
const besideFields = {
  bench: 'what this bench has taught is looked up in its own notebook',
  untyped: 'a draft’s own texts tell whether they were typed',
} as const;

test('a job of any file is the same job after a draft was made of it, and carried by a code', () => {
  const without = (job: JobInput, more: Partial<JobInput>): unknown => ({
    ...job,
    place: { ...job.place, mayTreat: false },
    ...Object.fromEntries(Object.keys(besideFields).map((key) => [key, null])),
    ...more,
  });
  fc.assert(
    fc.property(arbitraryJob, (file) => {
      const parsed = parseJob(file, { areaLater: true });
      fc.pre('job' in parsed);
      if (!('job' in parsed)) return;
      const { job } = parsed;
      const again = jobOf(jobFileOf(draftOf(job)));
      expect(isSame(without(again, {}), without({ ...job, title: job.title.trim() }, {}))).toBe(true);
      // less charge than the last place of a code
      fc.pre(job.bath.chargePassed === 0 || job.bath.chargePassed > 1);
      const read = carried(job);
      const own = {
        title: '',
        place: job.place,
        paper: job.paper,
        units: job.units ?? null,
        workshop: null,
      } as unknown as Partial<JobInput>;
      const bath = { ...job.bath, record: null };
      const design = { ...job.piece, design: null };
      expect(isSame(without(read, own), without({ ...job, bath, piece: design }, own))).toBe(true);
    }),
    chunk(60),
  );
});
