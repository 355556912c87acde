import { practice } from '../core/facts/limits.ts';
import { fromHours } from '../core/units/time.ts';

/** When all salt has dissolved, ms since 1970. */
export const dissolvedAt = (mixedAt: number): number => mixedAt + fromHours(practice.dissolveHours.value);
