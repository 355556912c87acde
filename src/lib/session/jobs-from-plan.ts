import type { JobInput } from '../core/plan/job-input.ts';
import { blankDraft } from './draft.ts';
import type { Draft } from './draft.ts';

const MM = 1e3;
const CM2 = 1e4;
const ICE = 273.15;
const typed = (value: number): string => String(Number(value.toPrecision(6)));
const millimetres = (metres: number): string => typed(metres * MM);

function pieceFields({ piece }: JobInput): Partial<Draft> {
  // the rectangle that stands for a disc has its area
  const across = Math.sqrt((4 / Math.PI) * piece.width * piece.height);
  const size =
    piece.shape === 'disc'
      ? { 'piece.diameter': millimetres(across) }
      : piece.shape === 'band'
        ? { 'piece.length': millimetres(piece.width), 'piece.width': millimetres(piece.height) }
        : { 'piece.width': millimetres(piece.width), 'piece.height': millimetres(piece.height) };
  const { openArea, openAreaFrom } = piece;
  const area =
    openArea === null || openAreaFrom === 'later'
      ? { 'piece.area': 'later' }
      : openAreaFrom === 'share'
        ? { 'piece.area': 'share', 'piece.openShare': typed((100 * openArea) / piece.faceArea) }
        : { 'piece.area': 'area', 'piece.openArea': typed(openArea * CM2) };
  return {
    'piece.metal': piece.metal,
    'piece.shape': piece.shape,
    ...size,
    'piece.thickness': millimetres(piece.thickness),
    'piece.thickness.unit': 'mm',
    'piece.faces': piece.faces,
    'piece.depth': millimetres(piece.depth),
    ...area,
    ...(piece.design ? { 'piece.design': JSON.stringify(piece.design) } : {}),
    'piece.count': String(piece.count),
    'piece.through': piece.through ? 'yes' : 'no',
  };
}

function tubFields({ tub }: JobInput): Partial<Draft> {
  if (tub.kind === 'jug') return { 'tub.kind': 'jug', 'tub.waterByJug': typed(tub.water * 1e6) };
  const fill = { 'tub.fill': millimetres(tub.fill) };
  return tub.kind === 'round'
    ? { 'tub.kind': 'round', 'tub.diameter': millimetres(tub.diameter), ...fill }
    : {
        'tub.kind': 'box',
        'tub.length': millimetres(tub.length),
        'tub.width': millimetres(tub.width),
        ...fill,
      };
}

const supplyFields = ({ supply }: JobInput): Partial<Draft> => ({
  'supply.kind': supply.kind,
  'supply.amps': supply.showsAmps ? 'yes' : 'no',
  ...(supply.control === 'amps'
    ? { 'supply.volts': typed(supply.maxVolts), 'supply.maxAmps': typed(supply.amps) }
    : {
        'supply.volts': typed(supply.volts),
        'supply.maxAmps': supply.maxAmps === null ? '' : typed(supply.maxAmps),
      }),
});

/** A planned job as a draft to start from: every length in mm, every field as if typed. */
export function draftOf(job: JobInput): Draft {
  const { cathode, bath, place } = job;
  return {
    ...blankDraft,
    title: job.title,
    ...pieceFields(job),
    'cathode.metal': cathode.metal === job.piece.metal ? 'same' : cathode.metal,
    'cathode.size': 'own',
    'cathode.width': millimetres(cathode.width),
    'cathode.height': millimetres(cathode.height),
    'cathode.gap': millimetres(cathode.gap),
    ...tubFields(job),
    'bath.salt': bath.salt,
    'bath.strength': typed(bath.strength),
    'bath.water': bath.water,
    'bath.temperature': typed(bath.temperature - ICE),
    'piece.attached': job.attached.join(' '),
    ...(job.hanger === null ? {} : { hanger: job.hanger }),
    'resist.kind': job.resist,
    ...supplyFields(job),
    'place.use': place.use,
    'place.country': place.country ?? '',
    'place.room': place.room === null ? '' : typed(place.room),
    paper: job.paper,
  };
}
