import { advice } from '../../core/facts/advice.ts';
import type {
  areaKinds,
  attachments,
  controls,
  equipment,
  faces,
  hangers,
  openings,
  papers,
  shapes,
  tubKinds,
  uses,
  waters,
} from '../../core/job/choices.ts';
import type { JobPath } from '../../core/job/fields.ts';
import type { lengthUnits, temperatureUnits } from '../../core/job/reading-units.ts';
import { metalNames, saltNames } from './materials.ts';
import { resistNames } from './resists.ts';
import { plain } from './locale.ts';

/** Label of a field where it is typed or chosen, and a hint that helps to fill it in. */
export interface FieldTexts {
  readonly label: string;
  readonly hint?: string;
}

const { roomSide, roomHeight } = advice;
const roomVolume = roomSide.value ** 2 * roomHeight.value;
const roomHint = `${plain(roomSide.value)} by ${plain(roomSide.value)} m and ${plain(roomHeight.value)} m high is about ${plain(roomVolume, 1)} m³`;

/** By the id of the field in the draft. */
export const fieldTexts = {
  'piece.metal': { label: 'Metal' },
  'piece.shape': { label: 'Shape' },
  'piece.width': { label: 'Width' },
  'piece.height': { label: 'Height' },
  'piece.diameter': { label: 'Diameter' },
  'piece.length': { label: 'Length, laid flat' },
  'piece.thickness': { label: 'Thickness' },
  'piece.count': { label: 'How many alike, in the tub together' },
  'piece.attached': { label: 'What is on the piece', hint: 'Bare sheet: go on.' },
  'piece.purpose': { label: 'Depth' },
  'piece.depth': { label: 'Depth' },
  'piece.polish': { label: 'Polish afterwards', hint: 'The bite goes deeper by what polishing takes off.' },
  'piece.area': { label: 'How you know it' },
  'piece.openShare': { label: 'Bare share of the face' },
  'piece.openArea': { label: 'Bare area, one piece' },
  'piece.faces': { label: 'Bitten faces' },
  hanger: { label: 'Hanger' },
  'cathode.metal': { label: 'Metal of the plate' },
  'cathode.size': { label: 'Its size under the liquid' },
  'cathode.width': { label: 'Width' },
  'cathode.height': { label: 'Height' },
  'tub.kind': { label: 'The tub' },
  'tub.length': { label: 'Inside length', hint: 'the gap runs along it' },
  'tub.width': { label: 'Inside width' },
  'tub.diameter': { label: 'Inside diameter' },
  'tub.fill': { label: 'Depth of liquid' },
  'tub.waterByJug': {
    label: 'Water',
    hint: 'Fill the tub with water until it covers the piece, then measure that water. See for yourself that the parts fit.',
  },
  'cathode.gap': { label: 'Gap between piece and plate', hint: 'Wide is even, narrow is quick.' },
  'bath.strength': { label: 'Strength', hint: 'salt for each litre of water' },
  'bath.water': { label: 'Water' },
  'bath.temperature': { label: 'Bath temperature' },
  scale: { label: 'Your scale shows steps of' },
  'resist.kind': { label: 'Resist' },
  'workshop.supply': { label: 'Which of your supplies?' },
  'workshop.has': { label: 'What you have' },
  'supply.kind': { label: 'Supply' },
  'supply.amps': { label: 'Does it show amps?' },
  'supply.volts': { label: 'Volts on its label' },
  'supply.maxAmps': { label: 'Most amps it gives' },
  'place.use': { label: 'The work is' },
  'place.country': {
    label: 'Country',
    hint: 'Its name, or two letters such as NZ. Left empty, the strictest rules are taken.',
  },
  'place.openings': { label: 'Gas leaves by' },
  'place.room': { label: 'Room', hint: roomHint },
  paper: { label: 'Paper' },
} as const satisfies Readonly<Record<string, FieldTexts>>;

export type NamedField = keyof typeof fieldTexts;

/** Name of each field within a sentence, by its path in the job file. */
export const fieldNames: Readonly<Record<JobPath, string>> = {
  title: 'title',
  'piece.metal': 'metal',
  'piece.shape': 'shape',
  'piece.length': 'length of the band',
  'piece.width': 'width of the piece',
  'piece.height': 'height of the piece',
  'piece.diameter': 'diameter',
  'piece.thickness': 'thickness',
  'piece.thickness.unit': 'unit of the thickness',
  'piece.faces': 'bare faces',
  'piece.purpose': 'purpose of the depth',
  'piece.depth': 'depth',
  'piece.depth.unit': 'unit of the depth',
  'piece.polish': 'allowance for polishing',
  'piece.area': 'way the bare area is known',
  'piece.openArea': 'bare area',
  'piece.openArea.unit': 'unit of the bare area',
  'piece.openShare': 'bare share',
  'piece.design': 'drawing',
  'piece.count': 'number of pieces',
  'piece.through': 'right through',
  'piece.attached': 'things on the piece',
  'piece.at': 'place of the piece',
  'cathode.metal': 'plate',
  'cathode.size': 'size of the plate',
  'cathode.width': 'width of the plate',
  'cathode.height': 'height of the plate',
  'cathode.gap': 'gap',
  'cathode.sideways': 'shift of the plate to the side',
  'cathode.faces': 'faces of the plate in use',
  'tub.kind': 'tub',
  'tub.length': 'length of the tub',
  'tub.width': 'width of the tub',
  'tub.diameter': 'diameter of the tub',
  'tub.fill': 'depth of liquid',
  'tub.waterByJug': 'water by the jug',
  'bath.from': 'new bath or one from the shelf',
  'bath.salt': 'salt',
  'bath.strength': 'strength',
  'bath.water': 'kind of water',
  'bath.temperature': 'bath temperature',
  'bath.record': 'bath',
  'bath.dissolved': 'metal in the bath',
  'bath.chargePassed': 'charge the bath has passed',
  'bath.for': 'metal of the proposed recipe',
  'bath.mixedAt': 'time of mixing',
  'workshop.known': 'workshop',
  'workshop.supply': 'supply of the workshop',
  'workshop.has': 'what the workshop has',
  'workshop.scale': 'step of the scale',
  hanger: 'hanger',
  'resist.kind': 'resist',
  'resist.paintedAt': 'time of painting',
  strip: 'test strip',
  'supply.kind': 'supply',
  'supply.control': 'what the supply holds',
  'supply.volts': 'volts',
  'supply.maxVolts': 'most volts',
  'supply.maxAmps': 'most amps',
  'supply.amps': 'amps',
  'supply.showsAmps': 'amps on the display',
  'supply.leads': 'resistance of the leads',
  'place.use': 'use',
  'place.country': 'country',
  'place.room': 'room',
  'place.openings': 'openings',
  'place.authorityAllowsTreatment': 'permission to treat the bath',
  paper: 'paper',
  'units.length': 'unit of lengths',
  'units.temperature': 'unit of temperatures',
};

/** Name of every choice. Supplies have names of their own, since they also use the word `unknown`. */
export const choiceNames: Readonly<
  Record<
    | keyof typeof metalNames
    | keyof typeof saltNames
    | keyof typeof resistNames
    | (
        | typeof shapes
        | typeof faces
        | typeof areaKinds
        | typeof attachments
        | typeof hangers
        | typeof tubKinds
        | typeof waters
        | typeof controls
        | typeof uses
        | typeof papers
        | typeof openings
        | typeof equipment
        | typeof lengthUnits
        | typeof temperatureUnits
      )[number],
    string
  >
> = {
  ...metalNames,
  ...saltNames,
  ...resistNames,
  rectangle: 'rectangle',
  disc: 'disc',
  band: 'band',
  front: 'front',
  back: 'back',
  both: 'both',
  area: 'as an area',
  share: 'as a share',
  later: 'later',
  seams: 'soldered seams',
  stones: 'stones',
  glue: 'glue',
  hinges: 'hinges',
  wire: 'wire',
  hole: 'hole',
  tab: 'tab',
  rack: 'rack',
  box: 'box',
  round: 'round',
  jug: 'filled by the jug',
  deionised: 'deionised',
  distilled: 'distilled',
  rain: 'rain water',
  tap: 'tap water',
  volts: 'volts',
  amps: 'amps',
  home: 'home',
  selling: 'selling',
  teaching: 'teaching',
  window: 'window that opens',
  outdoors: 'outdoors',
  none: 'nothing',
  thermometer: 'thermometer',
  multimeter: 'multimeter',
  calliper: 'calliper',
  goggles: 'goggles',
  gloves: 'gloves',
  tray: 'tray',
  jar: 'jar',
  A4: 'A4',
  Letter: 'Letter',
  mm: 'mm',
  cm: 'cm',
  in: 'in',
  degC: '°C',
  degF: '°F',
};
