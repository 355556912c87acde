import type { JobRecord } from '../notebook/records.ts';
import { poweredPaths } from '../procedure/bite-states.ts';
import { storedPath } from '../procedure/state-paths.ts';

/** Whether a job stands where current may flow. Light: it reads the stored state without the machine. */
export const isPowered = ({ snapshot }: JobRecord): boolean => poweredPaths.has(storedPath(snapshot) ?? '');
