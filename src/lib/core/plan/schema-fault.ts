import * as v from 'valibot';
import type { JobField } from '../job/field-kinds.ts';
import { fieldRows } from '../job/fields.ts';
import type { JobPath } from '../job/fields.ts';
import { shown } from './fault.ts';
import type { Fault } from './fault.ts';

/** Ways to say how large a tub is. */
export const tubSizes = 'length, width and fill; or diameter and fill; or waterByJug';

/** What a section of a job file must hold, for the line that says that it is missing; null for no section. */
function sectionHolds(section: string): string | null {
  if (section === 'tub') return tubSizes;
  const needed = fieldRows.filter(
    ([path, { schema, optional, fallback }]) =>
      path.startsWith(`${section}.`) && schema && !optional && fallback === undefined,
  );
  if (needed.length === 0) return null;
  const decides = ([, { when }]: (typeof fieldRows)[number]): JobPath | undefined =>
    fieldRows.find(([path, { schema }]) => schema && path === when?.[0])?.[0];
  const names = needed.flatMap((row) => (decides(row) ? [] : [row[0].slice(section.length + 1)]));
  const deciding = needed.map(decides).find((path) => path !== undefined);
  const rest = deciding ? `, and what its ${deciding.slice(section.length + 1)} needs` : '';
  return `an object with ${names.join(', ')}${rest}`;
}

/** What a field that is missing must be. */
const missing: Readonly<Partial<Record<JobField['kind'], string>>> = {
  text: 'a text',
  flag: 'true or false',
  count: 'a whole number',
  share: 'a share of one, such as 0.3',
};

const plainKinds: Readonly<Record<string, string>> = {
  number: 'a number',
  string: 'a text',
  boolean: 'true or false',
};

/** Limits of single values, by the kind of the check that failed. */
const limits: Readonly<Record<string, (requirement: unknown) => string>> = {
  min_value: (least) => `at least ${String(least)}`,
  max_value: (most) => `at most ${String(most)}`,
  gt_value: (bound) => `more than ${String(bound)}`,
  max_length: (most) => `at most ${String(most)} characters`,
  non_empty: () => 'a text that is not empty',
  integer: () => 'a whole number',
  finite: () => 'a finite number',
};

/** "a" | ("b" | "c") as a list for a reader. */
const listed = (expected: string): string => expected.replace(/["()]/g, '').replace(/ \| /g, ', ');

/** Says what a schema wanted, in words rather than in its own shorthand. */
function expectation(issue: v.BaseIssue<unknown>, path: string): string {
  const { type, expected, requirement } = issue;
  if (type === 'strict_object' && expected === 'never') return 'no such field';
  const row = fieldRows.find(([known]) => known === path)?.[1];
  if (row?.kind === 'amount' && type === 'strict_object') {
    const { standIn, blank, min = 1, unit = '' } = row;
    return `an amount such as { "value": ${standIn ?? (Number(blank) || Math.max(1, min))}, "unit": "${unit}" }`;
  }
  const section = sectionHolds(path);
  if (section !== null) return section;
  if (path === 'etchwright' && type === 'strict_object') return 'the version of the job file, 1';
  if (type === 'strict_object') return (row && missing[row.kind]) ?? 'a value: it must be given';
  const limit = limits[type];
  if (limit) return limit(requirement);
  if (['regex', 'check', 'custom'].includes(type) || expected === null) return issue.message;
  return plainKinds[expected] ?? listed(expected);
}

/** A schema's complaint as path, found and expected. */
export function schemaFault(issue: v.BaseIssue<unknown>): Fault {
  const path = v.getDotPath(issue) ?? '';
  const convertedBefore = issue.kind === 'transformation';
  return {
    path,
    found: convertedBefore ? issue.received : shown(issue.input),
    expected: convertedBefore ? (issue.expected ?? issue.message) : expectation(issue, path),
  };
}
