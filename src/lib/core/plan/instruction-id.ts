import type { ResistKind } from '../facts/resists.ts';
import type { OffSign } from '../facts/supplies.ts';
import type { Attachment, Hanger } from '../job/choices.ts';

/** Every line of work that a plan may hold, or its mixing on the maker's scale; the words room has their texts. */
export type InstructionId =
  | `attached-${Attachment}`
  | `hang-${Hanger}`
  | `mask-${ResistKind}`
  | `remove-${ResistKind}`
  | 'adult-removes'
  | 'check-metal'
  | 'measure-piece'
  | 'depth-wanted'
  | 'depth-through'
  | 'hang-piece'
  | 'plate-opposite'
  | 'piece-on-plus'
  | 'plate-on-minus'
  | 'lay-plate'
  | 'tray'
  | 'pour-water'
  | 'pour-jug'
  | 'dress'
  | 'weigh-salt'
  | 'stock-water'
  | 'stir-salt'
  | 'stock-pour'
  | 'label-both'
  | 'label-tub'
  | 'let-stand'
  | 'take-bath'
  | 'top-up'
  | 'weigh-piece'
  | 'degrease'
  | 'water-break'
  | 'stop-out-back'
  | 'stop-out-edges'
  | 'thinnest-line'
  | 'set-amps'
  | 'stop-at-charge'
  | 'set-volts'
  | 'has-volts'
  | 'stop-at-time'
  | 'batch-hangs'
  | 'jug-as-cube'
  | 'batch-lots'
  | 'batch-swap'
  | 'test-strip'
  | 'power-check'
  | 'switch-on'
  | 'first-look'
  | `look-off-${OffSign}`
  | 'watch-amps'
  | 'watch-bath'
  | 'deep-enough'
  | `supply-off-${OffSign}`
  | 'lift-to-first-rinse'
  | 'second-rinse'
  | 'no-neutraliser'
  | 'soda-wipe'
  | 'dry-and-measure'
  | 'settle-and-keep'
  | 'update-label'
  | 'update-label-minutes'
  | 'hand-over'
  | 'write-down';
