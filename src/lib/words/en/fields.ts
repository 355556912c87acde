import { advice } from '../../core/facts/advice.ts';
import type {
  areaKinds,
  attachments,
  controls,
  faces,
  hangers,
  papers,
  saltIds,
  shapes,
  tubKinds,
  uses,
  waters,
} from '../../core/job/choices.ts';
import type { JobPath } from '../../core/job/fields.ts';
import type { lengthUnits, temperatureUnits } from '../../core/job/reading-units.ts';
import type { ElementSymbol } from '../../core/facts/elements.ts';
import type { BitableMetal, RefusedMetal } from '../../core/facts/metals.ts';
import type { ResistKind } from '../../core/facts/resists.ts';
import type { BathSalt, RefusedSalt } from '../../core/facts/salts.ts';
import type { SupplyKind } from '../../core/facts/supplies.ts';
import { resistNames } from './resists.ts';
import { plain } from './locale.ts';

/** What a field of a job is called where it is typed or chosen, and what helps to fill it in. */
export interface FieldTexts {
  readonly label: string;
  readonly hint?: string;
}

const { roomSide, roomHeight } = advice;
const roomVolume = roomSide.value ** 2 * roomHeight.value;
const roomHint = `${plain(roomSide.value)} by ${plain(roomSide.value)} m and ${plain(roomHeight.value)} m high is about ${plain(roomVolume, 1)} m³`;

/** By the field's id in the draft. */
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
  'piece.polish': { label: 'Polish afterwards', hint: 'What polishing takes off is bitten on top.' },
  'piece.area': { label: 'How you know it' },
  'piece.openShare': { label: 'Bare share of the face' },
  'piece.openArea': { label: 'Bare area, one piece' },
  'piece.faces': { label: 'Bitten faces', hint: 'The other face is stopped out.' },
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
  'supply.kind': { label: 'Supply' },
  'supply.amps': { label: 'Does it show amps?' },
  'supply.volts': { label: 'Volts on its label' },
  'supply.maxAmps': { label: 'Most amps it gives' },
  'place.use': { label: 'The work is' },
  'place.country': {
    label: 'Country',
    hint: 'Two letters, such as NZ. Left empty, the strictest rules are taken.',
  },
  'place.room': { label: 'Room', hint: roomHint },
  paper: { label: 'Paper' },
} as const satisfies Readonly<Record<string, FieldTexts>>;

export type NamedField = keyof typeof fieldTexts;

/** What each field is called in a sentence, by its path in the job file. */
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
  scale: 'step of the scale',
  hanger: 'hanger',
  'resist.kind': 'resist',
  strip: 'test strip',
  'supply.kind': 'supply',
  'supply.control': 'knob that holds',
  'supply.volts': 'volts',
  'supply.maxVolts': 'most volts',
  'supply.maxAmps': 'most amps',
  'supply.amps': 'amps',
  'supply.showsAmps': 'amps on the display',
  'supply.leads': 'resistance of the leads',
  'place.use': 'use',
  'place.country': 'country',
  'place.room': 'room',
  'place.authorityAllowsTreatment': 'authority’s word on treating the bath',
  paper: 'paper',
  'units.length': 'unit of lengths',
  'units.temperature': 'unit of temperatures',
};

/** What stock, salts, resists and supplies are called. */
export const materialNames: Readonly<
  Record<
    BitableMetal | RefusedMetal | BathSalt | RefusedSalt | (typeof saltIds)[number] | ResistKind | SupplyKind,
    string
  >
> = {
  'fine-silver-999': 'fine silver',
  'sterling-925': 'sterling silver',
  C11000: 'copper',
  C26000: 'brass 70/30',
  stainless: 'stainless steel',
  '304': 'stainless steel 304',
  '316': 'stainless steel 316',
  'chrome-plated': 'chrome-plated metal',
  nichrome: 'nichrome',
  'Al-6061': 'aluminium 6061',
  gold: 'gold',
  'gold-filled': 'gold-filled metal',
  'silver-plated': 'silver-plated metal',
  plated: 'plated metal',
  galvanised: 'galvanised metal',
  unknown: 'unknown metal',
  'unknown-yellow': 'unknown yellow metal',
  'cadmium-solder': 'metal with cadmium solder',
  titanium: 'titanium',
  'silver-935-lowtarnish': '935 silver',
  'coin-900': 'coin silver',
  C22000: 'commercial bronze 90/10',
  C23000: 'red brass 85/15',
  C27000: 'yellow brass 65/35',
  C27200: 'yellow brass 63/37',
  C28000: 'brass 60/40',
  C36000: 'leaded brass C360',
  C51000: 'phosphor bronze',
  C75200: 'nickel silver',
  'mild-steel': 'mild steel',
  'Al-1100': 'aluminium',
  niobium: 'niobium',
  pewter: 'pewter',
  NaNO3: 'sodium nitrate',
  KNO3: 'potassium nitrate',
  NaCl: 'table salt (sodium chloride)',
  CuSO4: 'anhydrous copper sulfate',
  'CuSO4.5H2O': 'copper sulfate, blue crystals',
  Na2SO4: 'sodium sulfate',
  'Na2SO4.10H2O': 'sodium sulfate crystals (decahydrate)',
  KCl: 'potassium chloride',
  K2SO4: 'potassium sulfate',
  '(NH4)2SO4': 'ammonium sulfate',
  NH4Cl: 'ammonium chloride',
  NH4NO3: 'ammonium nitrate',
  'Cu(NO3)2': 'copper nitrate',
  ZnSO4: 'zinc sulfate',
  AgNO3: 'silver nitrate',
  NaHCO3: 'baking soda',
  Na2CO3: 'soda ash',
  citric: 'citric acid',
  Na3cit: 'sodium citrate',
  NaOAc: 'sodium acetate',
  Na2S2O3: 'sodium thiosulfate',
  MgSO4: 'Epsom salt',
  FeCl3: 'iron(III) chloride',
  ...resistNames,
  bench: 'bench supply',
  adapter: 'plug-in adapter',
  battery: 'battery with a fuse',
  alternating: 'alternating current',
  dimmer: 'dimmer or lamp transformer',
  mains: 'mains',
  'home-made': 'home-made supply',
  'car-battery': 'car battery',
};

export const elementNames: Readonly<Record<ElementSymbol, string>> = {
  Au: 'gold',
  Ag: 'silver',
  Cu: 'copper',
  Pb: 'lead',
  Sn: 'tin',
  Ni: 'nickel',
  Zn: 'zinc',
  Fe: 'iron',
  Cr: 'chromium',
  Al: 'aluminium',
  Mn: 'manganese',
  Ge: 'germanium',
  Si: 'silicon',
  P: 'phosphorus',
  Mo: 'molybdenum',
  Mg: 'magnesium',
};

/** What every word that an answer is chosen from is called. */
export const choiceNames: Readonly<
  Record<
    | keyof typeof materialNames
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
        | typeof lengthUnits
        | typeof temperatureUnits
      )[number],
    string
  >
> = {
  ...materialNames,
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
  A4: 'A4',
  Letter: 'Letter',
  mm: 'mm',
  cm: 'cm',
  in: 'in',
  degC: '°C',
  degF: '°F',
};
