import type { Piece } from '../cell/setup.ts';
import { draftFrom } from '../job/draft.ts';
import type { Draft } from '../job/draft.ts';
import { readingUnitsOf, unitsTyped } from '../job/reading-units.ts';
import type { JobInput } from './job-input.ts';

/** Sizes as the job file has them: the square that stands for a disc has its area. */
const sizesOf = ({ shape, width, height }: Piece) =>
  shape === 'disc'
    ? { diameter: Math.sqrt((4 / Math.PI) * width * height) }
    : shape === 'band'
      ? { length: width, width: height }
      : { width, height };

/**
 * A job as a draft with every field as if typed, lengths and temperature in its reading units; it stands for the same
 * job to six digits. Nothing is said the short way: a plate as large as the piece has its sizes.
 */
export function plainDraft(job: JobInput): Draft {
  const { piece, attached, tub, bath, resist } = job;
  const { openArea, openAreaFrom, faceArea } = piece;
  const units = readingUnitsOf(job);
  const held = Object.keys(bath.dissolved).length > 0 || bath.chargePassed > 0;
  return draftFrom(
    {
      ...job,
      piece: {
        ...piece,
        ...sizesOf(piece),
        attached,
        openShare: openArea === null ? null : openArea / faceArea,
      },
      tub: { ...tub, waterByJug: tub.kind === 'jug' ? tub.water : null },
      resist: { kind: resist },
      units,
    },
    {
      'piece.purpose': 'number',
      'piece.area': openArea === null ? 'later' : openAreaFrom,
      'cathode.size': 'own',
      'tub.kind': tub.kind,
      'bath.from': held || bath.record !== null ? 'shelf' : 'new',
      'unit.length': units.length,
      'piece.thickness.unit': units.length === 'in' ? 'in' : 'mm',
      ...unitsTyped(units),
      'unit.temperature': units.temperature,
    },
  );
}
