import type { ElementSymbol } from '../facts/elements.ts';
import { tools } from '../facts/advice.ts';
import type { areaKinds, Equipment, Faces, Opening, Shape, Use, Water } from '../job/choices.ts';
import type { Shares } from '../mask/shares.ts';
import type { BitableMetal, RefusedMetal } from '../facts/metals.ts';
import type { ResistKind } from '../facts/resists.ts';
import type { SaltId } from '../facts/salts.ts';
import type { SupplyKind } from '../facts/supplies.ts';
import { toSi } from '../units/convert.ts';
import type {
  Area,
  Charge,
  Current,
  Length,
  Mass,
  MassConcentration,
  Ratio,
  Resistance,
  Temperature,
  Voltage,
  Volume,
} from '../units/quantity.ts';

export type { Attachment, Faces, Hanger, Use, Water } from '../job/choices.ts';

/** The metal being etched: one of `count` equal pieces that hang in the tub together. */
export interface Piece {
  readonly metal: BitableMetal | RefusedMetal;
  readonly shape: Shape;
  /** across the tub; a disc or a band has the width of the rectangle that is computed instead */
  readonly width: Length;
  /** vertical */
  readonly height: Length;
  readonly thickness: Length;
  readonly faces: Faces;
  /** metal of all bitten faces of one piece, bare or not */
  readonly faceArea: Area;
  /** bare metal of one piece, all bitten faces; null while it is still to be measured */
  readonly openArea: Area | null;
  /** how the bare area is known: a typed share is less accurate than a typed area */
  readonly openAreaFrom: (typeof areaKinds)[number];
  readonly depth: Length;
  readonly count: number;
  /** the maker wants to etch right through */
  readonly through: boolean;
  /** centre of the piece, across and up the tub; null: opposite the plate */
  readonly at: { readonly y: Length; readonly z: Length } | null;
  /** where its bare parts are; null when only their area is known */
  readonly design: Shares | null;
}

/** The metal opposite. */
export interface Cathode {
  readonly metal: BitableMetal | RefusedMetal | 'stainless';
  readonly width: Length;
  readonly height: Length;
  readonly gap: Length;
  readonly sideways: Length;
  readonly faces: Faces;
}

export type Tub =
  | { readonly kind: 'box'; readonly length: Length; readonly width: Length; readonly fill: Length }
  | { readonly kind: 'round'; readonly diameter: Length; readonly fill: Length }
  | { readonly kind: 'jug'; readonly water: Volume };

export interface Bath {
  readonly salt: SaltId;
  readonly strength: MassConcentration;
  readonly water: Water;
  readonly temperature: Temperature;
  /** id of a bath from the shelf; null for a new one */
  readonly record: string | null;
  /** metal already in the bath */
  readonly dissolved: Readonly<Partial<Record<ElementSymbol, MassConcentration>>>;
  readonly chargePassed: Charge;
}

interface SupplyBase {
  readonly kind: SupplyKind;
  readonly showsAmps: boolean;
  /** of both leads and clips; null when not measured */
  readonly leads: Resistance | null;
}

export type Supply =
  | (SupplyBase & { readonly control: 'volts'; readonly volts: Voltage; readonly maxAmps: Current | null })
  | (SupplyBase & { readonly control: 'amps'; readonly amps: Current; readonly maxVolts: Voltage });

export interface Place {
  readonly use: Use;
  readonly room: Volume | null;
  /** how gas leaves; absent when nobody said */
  readonly openings?: Opening;
  /** ISO 3166 alpha-2; null means the strictest rules */
  readonly country: string | null;
  /** the maker has stated that their authority allows a used bath to be treated */
  readonly mayTreat: boolean;
}

/** Everything that a plan is computed from, in SI. */
export interface Setup {
  readonly piece: Piece;
  readonly cathode: Cathode;
  readonly tub: Tub;
  readonly bath: Bath;
  readonly resist: ResistKind;
  readonly supply: Supply;
  readonly place: Place;
  /** absent from plans stored before it was asked */
  readonly workshop?: Workshop;
}

export interface Workshop {
  readonly has: readonly Equipment[];
  /** smallest step of the scale; null where nothing is weighed */
  readonly scale: Mass | null;
  /** which of its supplies: another one of the same kind is wired anew */
  readonly supply?: string;
}
type Told = Pick<Setup, 'workshop'>;

/** Whether the workshop has a thing; where nobody was asked, a thermometer alone. */
export const hasIn = ({ workshop }: Told, thing: Equipment): boolean =>
  (workshop?.has ?? ['thermometer']).includes(thing);

const FINE = toSi(tools.fineScale.value, tools.fineScale.unit, 'mass');

/** Whether there is a scale; where nobody was asked, there is. */
export const hasScale = ({ workshop }: Told): boolean => workshop === undefined || workshop.scale !== null;

/** Whether the loss of a small piece can be weighed. */
export const hasFineScale = ({ workshop }: Told): boolean =>
  workshop === undefined || (workshop.scale !== null && workshop.scale <= FINE * (1 + 1e-9));

/** Bare metal of the whole batch. */
export const batchArea = (piece: Piece, openArea: Area): Area => (openArea * piece.count) as Area;

/** Bare share of the bitten faces. */
export const bareShare = (piece: Piece, openArea: Area): Ratio => (openArea / piece.faceArea) as Ratio;
