import { version } from '$app/environment';
import { warmGain } from '../core/chemistry/solution.ts';
import { cellOffset } from '../core/cell/offset.ts';
import { isBitable, metals } from '../core/facts/metals.ts';
import type { MetalFamily } from '../core/facts/metals.ts';
import type { Anion } from '../core/facts/salts/salt-facts.ts';
import { findBoughtSalt } from '../core/facts/salts.ts';
import { canBe, canBePace } from '../core/learn/rate.ts';
import type { Rate } from '../core/learn/rate.ts';
import type { Plan } from '../core/plan/plan.ts';
import { knobPoints } from '../core/run/knob.ts';
import type { CellPoint } from '../core/run/knob.ts';
import { converted, toSi } from '../core/units/convert.ts';
import { toMinutes } from '../core/units/time.ts';
import type { JobRecord } from '../notebook/records.ts';
import { isUnreadable, readJob } from '../notebook/store.ts';
import type { Notebook } from '../notebook/store.ts';
import { shownBy } from './rate-of.ts';
import { runsIn, soFar } from './run-log.ts';

/** Metal and salt: jobs with the same ones learn from each other. */
export interface MetalAndSalt {
  readonly family: MetalFamily;
  readonly anion: Anion;
}

/** The results of a job. */
export interface Came {
  /** time of the first bite, ms since 1970 */
  readonly at: number;
  readonly pieces: number;
  readonly minutes: number;
  readonly chargeAh: number;
  readonly wantedUm: number;
  readonly gotUm: number | null;
}

/** A summary of one job, stored beside it, so that a thousand jobs can be used without reading them all. */
export interface JobSummary {
  readonly id: string;
  readonly title: string;
  readonly touchedAt: number;
  readonly pair: MetalAndSalt | null;
  readonly rate: Rate | null;
  /** share of the tables' current, of a job whose amp-hours were not counted */
  readonly pace: Rate | null;
  readonly points: readonly CellPoint[];
  readonly came: Came | null;
}

/** Metal family and anion of the salt; null for a pairing that is not etched. */
export function pairOf(metal: string, salt: string): MetalAndSalt | null {
  const found = findBoughtSalt(salt);
  return found !== null && isBitable(metal)
    ? { family: metals[metal].family, anion: found.facts.anion }
    : null;
}

/** Volts and amps of a job, one point for each setting of its supply. */
export function pointsOf({ readings }: JobRecord, plan: Plan): readonly CellPoint[] {
  const { piece, bath, cathode } = plan.job;
  const salt = findBoughtSalt(bath.salt);
  if (salt === null || !isBitable(piece.metal)) return [];
  const leads = plan.figures.current?.working.inputs.find(({ id }) => id === 'leads')?.value;
  const ohms = plan.figures.cell_resistance?.value;
  if (leads === undefined || ohms === undefined) return [];
  return knobPoints(readings, {
    offset: cellOffset(piece.metal, salt, cathode.metal).median.value,
    bath: ohms,
    leads,
    gainAt: (celsius) =>
      warmGain(
        salt,
        bath.temperature,
        celsius === null ? 0 : toSi(celsius, 'degC', 'temperature') - bath.temperature,
      ),
  });
}

function cameOf(record: JobRecord, plan: Plan): Came | null {
  const so = soFar(record, runsIn(record), plan, record.updatedAt);
  const [first] = so.runs;
  if (!first) return null;
  return {
    at: first.startedAt,
    pieces: plan.job.piece.count,
    minutes: toMinutes(so.on),
    chargeAh: so.chargeAh,
    wantedUm: converted(plan.job.piece.depth, 'm', 'um'),
    gotUm: record.result?.depthUm ?? null,
  };
}

/**
 * The summary of one record. Its plan may come from another version or from anybody: if reading it throws,
 * return an empty summary.
 */
export function summaryOf(record: JobRecord): JobSummary {
  const silent: JobSummary = {
    id: record.id,
    title: record.draft['title'] ?? '',
    touchedAt: record.updatedAt,
    pair: null,
    rate: null,
    pace: null,
    points: [],
    came: null,
  };
  try {
    const plan = record.planAtStart as Plan | null;
    const pair = plan && pairOf(plan.job.piece.metal, plan.job.bath.salt);
    if (!pair) return silent;
    const { rate, pace } = shownBy(record);
    return {
      ...silent,
      pair,
      rate: rate && canBe(rate) ? rate : null,
      pace: pace && canBePace(pace) ? pace : null,
      points: pointsOf(record, plan),
      came: cameOf(record, plan),
    };
  } catch {
    return silent;
  }
}

/** The summaries of all jobs of a notebook, read from those stored beside the jobs. */
export async function summariesIn(book: Notebook): Promise<readonly JobSummary[]> {
  const kept = await book.derived(
    'told',
    (raw): JobSummary | null => {
      const record = readJob(raw);
      return isUnreadable(record) ? null : summaryOf(record);
    },
    version,
  );
  return [...kept.values()].filter((summary) => summary !== null);
}
