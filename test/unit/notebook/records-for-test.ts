import { jobVersion } from '$lib/notebook/records.ts';
import type { BathRecord, JobRecord, Preferences } from '$lib/notebook/records.ts';

export const aJob = (id: string, change: Partial<JobRecord> = {}): JobRecord => ({
  version: jobVersion,
  id,
  createdAt: 1_764_000_000_000,
  updatedAt: 1_764_000_000_000,
  appVersion: '0.1.0',
  draft: { title: `Job ${id}`, 'piece.metal': 'sterling-925', 'bath.record': '' },
  at: '',
  procedureVersion: 1,
  snapshot: null,
  events: [],
  planAtStart: null,
  readings: [],
  result: null,
  ...change,
});

const MIXED = 1_764_000_000_000;

/** A litre of silver bath that one job has used. */
export const aBath = (id: string, change: Partial<BathRecord> = {}): BathRecord => ({
  version: 2,
  id,
  name: 'SILVER 1',
  salt: 'NaNO3',
  water: 'deionised',
  metalGroup: 'silver',
  events: [
    { type: 'mixed', at: MIXED, strength: 60, waterMl: 980, volumeMl: 1000, heldMg: {} },
    { type: 'used', at: MIXED + 1, job: 'earlier', chargeAh: 0.4, tookMg: { Ag: 120 } },
  ],
  ...change,
});

export const somePreferences: Preferences = { version: 1, use: 'home', country: 'NZ', paper: 'A4' };

/** A job whose current may flow. */
export const running = { value: { etch: 'running' }, context: {} };
