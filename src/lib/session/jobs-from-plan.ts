import type { JobInput } from '../core/plan/job-input.ts';
import { readingUnitsOf } from '../core/job/reading-units.ts';
import { fromSi } from '../core/units/convert.ts';
import { si } from '../core/units/quantity.ts';
import type { Length } from '../core/units/quantity.ts';
import { blankDraft } from './draft.ts';
import type { Draft } from './draft.ts';

const CM2 = 1e4;
const typed = (value: number): string => String(Number(value.toPrecision(6)));
const millimetres = (metres: Length): string => typed(fromSi(metres, 'mm'));
/** As the maker types lengths of this job. */
const lengthsOf = (job: JobInput) => {
  const { length } = readingUnitsOf(job);
  return (metres: Length): string => typed(fromSi(metres, length));
};

function pieceFields(job: JobInput): Partial<Draft> {
  const { piece } = job;
  const inUnit = lengthsOf(job);
  // the rectangle that stands for a disc has its area
  const across = si<'length'>(Math.sqrt((4 / Math.PI) * piece.width * piece.height));
  const size =
    piece.shape === 'disc'
      ? { 'piece.diameter': inUnit(across) }
      : piece.shape === 'band'
        ? { 'piece.length': inUnit(piece.width), 'piece.width': inUnit(piece.height) }
        : { 'piece.width': inUnit(piece.width), 'piece.height': inUnit(piece.height) };
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

function tubFields(job: JobInput): Partial<Draft> {
  const { tub } = job;
  const inUnit = lengthsOf(job);
  if (tub.kind === 'jug') return { 'tub.kind': 'jug', 'tub.waterByJug': typed(tub.water * 1e6) };
  const fill = { 'tub.fill': inUnit(tub.fill) };
  return tub.kind === 'round'
    ? { 'tub.kind': 'round', 'tub.diameter': inUnit(tub.diameter), ...fill }
    : {
        'tub.kind': 'box',
        'tub.length': inUnit(tub.length),
        'tub.width': inUnit(tub.width),
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

/** A planned job as a draft to start from: every field as if typed, lengths and temperature in its reading units. */
export function draftOf(job: JobInput): Draft {
  const { cathode, bath, place } = job;
  const units = readingUnitsOf(job);
  const inUnit = lengthsOf(job);
  return {
    ...blankDraft,
    title: job.title,
    ...pieceFields(job),
    'cathode.metal': cathode.metal === job.piece.metal ? 'same' : cathode.metal,
    'cathode.size': 'own',
    'cathode.width': inUnit(cathode.width),
    'cathode.height': inUnit(cathode.height),
    'cathode.gap': inUnit(cathode.gap),
    ...tubFields(job),
    'bath.salt': bath.salt,
    'bath.strength': typed(bath.strength),
    'bath.water': bath.water,
    'bath.temperature': typed(fromSi(bath.temperature, units.temperature)),
    'piece.attached': job.attached.join(' '),
    ...(job.hanger === null ? {} : { hanger: job.hanger }),
    'resist.kind': job.resist,
    ...supplyFields(job),
    'place.use': place.use,
    'place.country': place.country ?? '',
    'place.room': place.room === null ? '' : typed(place.room),
    'unit.length': units.length,
    'unit.temperature': units.temperature,
    paper: job.paper,
  };
}
