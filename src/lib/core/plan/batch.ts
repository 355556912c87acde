import type { SolvedField } from '../cell/solved-field.ts';
import { boxOf } from '../cell/tub.ts';
import type { Supply } from '../cell/setup.ts';
import type { Current } from '../units/quantity.ts';
import type { Figure } from '../units/figure.ts';
import type { JobInput } from './job-input.ts';
import type { Rack } from './plan.ts';
import type { WorkingInputs } from './working-inputs.ts';
import { figureUnits } from './outcome.ts';
import { workingOf } from './workings.ts';

/*
 * Pieces of a batch hang together: charge, amps and metal are the batch's, and the current's path is capped
 * by the tub's cross-section. Rows are chosen so that the least room of a piece is greatest: twelve tokens
 * lie between 96 and 102 % of their mean, where a full row and one piece above it gave 92 to 162 %. A batch
 * is split only where nothing holds the amps: with a knob that does, lots would take as long as all at once.
 */

/**
 * The most that a supply without a knob for it may be asked for; null where a knob holds the amps, or where
 * nobody knows.
 */
export const rating = (supply: Supply): Current | null =>
  supply.control === 'volts' && supply.kind !== 'bench' ? supply.maxAmps : null;

/**
 * How many pieces hung together a supply carries.
 * @param askedBy amps that so many pieces ask for at the set volts
 * @returns `count` when all of them; 0 when not even one
 */
export function piecesAtOnce(count: number, most: number, askedBy: (pieces: number) => number): number {
  let pieces = count;
  while (pieces > 0 && askedBy(pieces) > most) pieces -= 1;
  return pieces;
}

/** Each piece of a batch where it hangs, with its part of the current; null for one piece. */
export function rackOf({ piece, tub }: JobInput, { pieces }: SolvedField, current: number): Rack | null {
  if (piece.count === 1) return null;
  const { width, fill } = boxOf(tub);
  return {
    width,
    fill,
    places: pieces.map(({ y, z, relative }) => ({
      y,
      z,
      relative,
      amps: (current * relative) / piece.count,
    })),
  };
}

/** The least bitten piece of a batch over the most bitten, %, by where they hang. */
export function spreadFigure({ pieces }: SolvedField, workingInputs: WorkingInputs): Figure {
  const bites = pieces.map(({ relative }) => relative);
  const value = (100 * Math.min(...bites)) / Math.max(...bites);
  return {
    value,
    low: value,
    high: value,
    unit: figureUnits.batch_evenness,
    working: workingOf('batch_evenness', workingInputs),
  };
}

export function lotFigure(pieces: number, workingInputs: WorkingInputs): Figure {
  const working = workingOf('pieces_at_once', workingInputs);
  return { value: pieces, low: pieces, high: pieces, unit: figureUnits.pieces_at_once, working };
}
