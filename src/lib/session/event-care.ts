import { checkNamed } from '../procedure/checks.ts';
import type { ProcedureEvent } from '../procedure/events.ts';

/** Events whose record must be on the disk before anything else happens. */
export const strictEvents: ReadonlySet<ProcedureEvent['type']> = new Set<ProcedureEvent['type']>([
  'start.pressed',
  'stop.pressed',
  'strip.started',
  'strip.stopped',
  'meter.read',
  'check.answered',
  'depth.judged',
  'job.restored',
]);

/** Whether an event is an answer before power, or Start itself. */
export const isBeforePower = (event: ProcedureEvent): boolean =>
  event.type === 'start.pressed' ||
  event.type === 'strip.started' ||
  (event.type === 'check.answered' && checkNamed(event.check).hold === 'power');
