import type { JobRecord } from '../notebook/records.ts';
import { poweredPaths } from '../procedure/bite-states.ts';
import { storedPath } from '../procedure/state-paths.ts';

/**
 * Whether current may flow in a job. It reads only the stored state, so that the state machine need not be
 * loaded.
 */
export const isPowered = ({ snapshot }: JobRecord): boolean => poweredPaths.has(storedPath(snapshot) ?? '');
