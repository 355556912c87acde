import { converted } from '../core/units/convert.ts';
import { numberIn } from '../core/units/typed-number.ts';
import type { JobRecord } from './records.ts';

type Cell = string | number | null | undefined;

/** Text that a spreadsheet would run as a formula. It gets a prefix that prevents this. */
const FORMULA = /^[=+\-@\t\r]/;

function cellText(cell: Cell): string {
  if (cell === null || cell === undefined) return '';
  if (typeof cell === 'number') return String(cell);
  const safe = FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A table as RFC 4180 describes it. */
const table = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');

const iso = (at: number): string => new Date(at).toISOString();

/** The wanted depth in the column's unit, whatever unit it was typed in. */
function depthMm({ 'piece.depth': typed, 'piece.depth.unit': unit }: JobRecord['draft']): Cell {
  const depth = numberIn(typed ?? '');
  return unit === 'in' && depth !== null ? Number(converted(depth, 'in', 'mm').toPrecision(4)) : typed;
}

/** A line for each job: its answers and its results. */
export const jobsCsv = (records: readonly JobRecord[]): string =>
  table([
    [
      'id',
      'title',
      'begun',
      'touched',
      'metal',
      'salt',
      'g/L',
      'wanted mm',
      'depth um',
      'g before',
      'g after',
      'measured with',
      'by eye',
      'edge',
      'texture',
      'mask',
      'sludge',
      'pictures',
      'readings',
      'note',
    ],
    ...records.map(({ id, draft, createdAt, updatedAt, result, readings, photos }): readonly Cell[] => [
      id,
      draft['title'],
      iso(createdAt),
      iso(updatedAt),
      draft['piece.metal'],
      draft['bath.salt'],
      draft['bath.strength'],
      depthMm(draft),
      result?.depthUm,
      result?.massBeforeG,
      result?.massAfterG,
      result?.depthBy,
      result?.seen?.['depth'],
      result?.seen?.['edge'],
      result?.seen?.['texture'],
      result?.seen?.['resist'],
      result?.seen?.['sludge'],
      photos?.length ?? 0,
      readings.length,
      result?.note,
    ]),
  ]);

/** A line for each reading of every job. */
export const readingsCsv = (records: readonly JobRecord[]): string =>
  table([
    ['job', 'title', 'at', 'amps', 'volts', 'degC', 'note'],
    ...records.flatMap(({ id, draft, readings }) =>
      readings.map(({ at, amps, volts, celsius, note }): readonly Cell[] => [
        id,
        draft['title'],
        iso(at),
        amps,
        volts,
        celsius,
        note,
      ]),
    ),
  ]);
