import * as v from 'valibot';
import { shown } from './fault.ts';
import type { Fault } from './fault.ts';

/** What each part of a job file holds, for the line that says that it is missing. */
const parts: Readonly<Record<string, string>> = {
  etchwright: 'the version of the job file, 1',
  title: 'a text of 1 to 120 characters',
  piece: 'the piece: metal, shape and sizes, thickness, faces, bare area, depth',
  cathode: 'the plate: metal, width, height, gap',
  tub: 'the tub: length, width and fill; or diameter and fill; or waterByJug',
  bath: 'the bath: salt, strength, temperature',
  resist: 'the resist, such as { "kind": "nail-varnish" }',
  supply: 'the supply: control, and volts or amps',
};

const AMOUNT = 'an amount such as { "value": 30, "unit": "mm" }';
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
  if (type === 'strict_object')
    return parts[path] ?? (issue.input === undefined ? 'a value: it must be given' : AMOUNT);
  const limit = limits[type];
  if (limit) return limit(requirement);
  if (type === 'regex' || expected === null) return issue.message;
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
