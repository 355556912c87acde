import { fnv1a32 } from '../units/fnv.ts';
import { tables } from './tables.ts';

const fingerprint = fnv1a32(JSON.stringify(tables)).toString(16).padStart(8, '0');

/** Version of the data a plan was made with: release date of the tables and their fingerprint. */
export const dataVersion = `2026-11-26.${fingerprint}`;
