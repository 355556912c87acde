import type { Fault } from '../core/plan/fault.ts';
import { lengthUnits } from '../core/job/reading-units.ts';
import { fromSi, toSi } from '../core/units/convert.ts';
import { blankDraft } from './draft.ts';
import type { Draft, FieldId } from './draft.ts';

/** A typed number: point or comma, spaces ignored. What is no number is handed on as it stands. */
export const typedNumber = (text: string): number | string => {
  const plain = text.replace(/\s/g, '').replace(',', '.');
  return plain !== '' && Number.isFinite(Number(plain)) ? Number(plain) : text.trim();
};

const amount = (text: string, unit: string) =>
  text.trim() === '' ? undefined : { value: typedNumber(text), unit };

/** Right through is the sheet's thickness; from both faces each bites half of it. */
function throughDepth(draft: Draft) {
  const unit = draft['piece.thickness.unit'];
  const whole = amount(draft['piece.thickness'], unit);
  if (draft['piece.faces'] !== 'both' || typeof whole?.value !== 'number') return whole;
  try {
    const metres = toSi(whole.value, unit, 'length');
    return { value: Number((fromSi(metres, 'mm') / 2).toPrecision(6)), unit: 'mm' };
  } catch (error) {
    // no such gauge: the thickness itself is at fault, and says so
    if (error instanceof RangeError) return whole;
    throw error;
  }
}

/** Things on a piece that make it no piece for this bath. */
const isRefused = (thing: string): boolean => thing === 'oldsolder' || thing === 'plating';

/** What is on the piece decides before the sheet's own metal does. */
const metalOf = (draft: Draft): string => {
  const attached = draft['piece.attached'].split(' ');
  if (attached.includes('oldsolder')) return 'cadmium-solder';
  return attached.includes('plating') ? 'plated' : draft['piece.metal'];
};

/** Where the bare parts lie; a stored text that is none is left to the reader of the job file. */
function designOf(draft: Draft): { design?: unknown } {
  const text = draft['piece.design'];
  if (text === '') return {};
  try {
    return { design: JSON.parse(text) as unknown };
  } catch {
    return { design: text };
  }
}

function pieceFile(draft: Draft) {
  const length = draft['unit.length'];
  const depth = typedNumber(draft['piece.depth']);
  const polish = typedNumber(draft['piece.polish']);
  // what polishing takes off is bitten on top
  const planned =
    typeof depth === 'number' && typeof polish === 'number' ? Number((depth + polish).toPrecision(6)) : depth;
  const shape = draft['piece.shape'];
  const size =
    shape === 'disc'
      ? { diameter: amount(draft['piece.diameter'], length) }
      : shape === 'band'
        ? { length: amount(draft['piece.length'], length), width: amount(draft['piece.width'], length) }
        : { width: amount(draft['piece.width'], length), height: amount(draft['piece.height'], length) };
  const area = draft['piece.area'];
  const share = typedNumber(draft['piece.openShare']);
  return {
    metal: metalOf(draft),
    shape,
    ...size,
    thickness: amount(draft['piece.thickness'], draft['piece.thickness.unit']),
    faces: draft['piece.faces'],
    ...(area === 'area' ? { openArea: amount(draft['piece.openArea'], 'cm2'), ...designOf(draft) } : {}),
    ...(area === 'share' ? { openShare: typeof share === 'number' ? share / 100 : share } : {}),
    depth: draft['piece.purpose'] === 'through' ? throughDepth(draft) : { value: planned, unit: 'mm' },
    count: typedNumber(draft['piece.count']),
    through: draft['piece.through'] === 'yes',
    attached: draft['piece.attached'].split(' ').filter((thing) => !isRefused(thing) && thing !== ''),
  };
}

/** Width and height of the rectangle that the plate copies when it is as large as the piece. */
const pieceSize = (draft: Draft): [FieldId, FieldId] =>
  draft['piece.shape'] === 'disc'
    ? ['piece.diameter', 'piece.diameter']
    : draft['piece.shape'] === 'band'
      ? ['piece.length', 'piece.width']
      : ['piece.width', 'piece.height'];

function cathodeFile(draft: Draft) {
  const length = draft['unit.length'];
  const [width, height] =
    draft['cathode.size'] === 'same' ? pieceSize(draft) : (['cathode.width', 'cathode.height'] as const);
  return {
    metal: draft['cathode.metal'] === 'same' ? draft['piece.metal'] : draft['cathode.metal'],
    width: amount(draft[width], length),
    height: amount(draft[height], length),
    gap: amount(draft['cathode.gap'], length),
  };
}

function tubFile(draft: Draft) {
  const length = draft['unit.length'];
  const kind = draft['tub.kind'];
  if (kind === 'jug') return { waterByJug: amount(draft['tub.waterByJug'], 'mL') };
  const fill = amount(draft['tub.fill'], length);
  if (kind === 'round') return { diameter: amount(draft['tub.diameter'], length), fill };
  return { length: amount(draft['tub.length'], length), width: amount(draft['tub.width'], length), fill };
}

function supplyFile(draft: Draft) {
  const maxAmps = amount(draft['supply.maxAmps'], 'A');
  const showsAmps = draft['supply.amps'] === 'yes';
  return {
    kind: draft['supply.kind'],
    control: 'volts',
    volts: amount(draft['supply.volts'], 'V'),
    showsAmps,
    ...(maxAmps === undefined ? {} : { maxAmps }),
  };
}

/** Metal that a bath from the shelf holds already. */
function heldBefore(draft: Draft): object {
  const held = JSON.parse(draft['bath.dissolved'] || '{}') as Record<string, number>;
  return Object.fromEntries(
    Object.entries(held).map(([element, value]) => [element, { value, unit: 'mg/L' }]),
  );
}

/** The job file that a draft stands for: what the command line would read. */
export function jobFileOf(draft: Draft): object {
  const room = amount(draft['place.room'], 'm3');
  const country = draft['place.country'].trim().toUpperCase();
  return {
    etchwright: 1,
    title: draft.title.trim() === '' ? blankDraft.title : draft.title,
    piece: pieceFile(draft),
    cathode: cathodeFile(draft),
    tub: tubFile(draft),
    bath: {
      salt: draft['bath.salt'],
      strength: amount(draft['bath.strength'], 'g/L'),
      water: draft['bath.water'],
      temperature: amount(draft['bath.temperature'], draft['unit.temperature']),
      ...(draft['bath.from'] === 'shelf'
        ? {
            record: draft['bath.record'],
            dissolved: heldBefore(draft),
            ...(draft['bath.chargePassed'] === ''
              ? {}
              : { chargePassed: amount(draft['bath.chargePassed'], 'A.h') }),
          }
        : {}),
    },
    hanger: draft.hanger,
    resist: { kind: draft['resist.kind'] },
    supply: supplyFile(draft),
    place: { use: draft['place.use'], ...(room ? { room } : {}), ...(country ? { country } : {}) },
    paper: draft.paper,
    units: { length: draft['unit.length'], temperature: draft['unit.temperature'] },
  };
}

/** What stands in for fields that are still blank, mm, so that a wrong pairing is refused at the first question. */
const standIns: Partial<Record<FieldId, number>> = {
  'piece.width': 30,
  'piece.height': 40,
  'piece.diameter': 30,
  'piece.length': 60,
  'cathode.width': 30,
  'cathode.height': 40,
};

/** A draft with stand-ins for blanks. A tub still unknown becomes a jug, which nothing can fail to fit. */
export function filledDraft(draft: Draft): Draft {
  const tubFields = ['tub.length', 'tub.width', 'tub.fill', 'tub.diameter', 'tub.waterByJug'] as const;
  const needed = { box: [0, 1, 2], round: [3, 2], jug: [4] }[draft['tub.kind']] ?? [];
  const isTubBlank = needed.some((i) => draft[tubFields[i] as FieldId].trim() === '');
  const unit = lengthUnits.find((known) => known === draft['unit.length']) ?? 'mm';
  const blanks = Object.entries(standIns)
    .filter(([field]) => draft[field as FieldId].trim() === '')
    .map(([field, mm]): [string, string] => [
      field,
      String(Number(fromSi(toSi(mm, 'mm', 'length'), unit).toPrecision(4))),
    ]);
  const isAreaBlank =
    draft[draft['piece.area'] === 'area' ? 'piece.openArea' : 'piece.openShare'].trim() === '';
  const isThicknessBlank = draft['piece.thickness'].trim() === '';
  return {
    ...draft,
    ...Object.fromEntries(blanks),
    ...(isThicknessBlank ? { 'piece.thickness': '1', 'piece.thickness.unit': 'mm' } : {}),
    ...(isTubBlank ? { 'tub.kind': 'jug', 'tub.waterByJug': '500' } : {}),
    ...(isAreaBlank ? { 'piece.area': 'later' } : {}),
    ...(draft['bath.salt'] === 'no-label' ? { 'bath.salt': blankDraft['bath.salt'] } : {}),
    ...(draft['supply.volts'].trim() === '' ? { 'supply.volts': blankDraft['supply.volts'] } : {}),
  };
}

/** The field that a fault belongs to, so that it is shown where it was typed. */
export function fieldOf(fault: Fault, draft: Draft): FieldId | null {
  const path = fault.path.replace(/\.(value|unit)$/, '');
  if (path === 'cathode.width' || path === 'cathode.height') {
    const [width, height] = pieceSize(draft);
    if (draft['cathode.size'] === 'same') return path === 'cathode.width' ? width : height;
  }
  if (path === 'tub') return draft['tub.kind'] === 'jug' ? 'tub.waterByJug' : 'tub.fill';
  return Object.hasOwn(blankDraft, path) ? (path as FieldId) : null;
}
