import type { ElementSymbol } from '../facts/elements.ts';
import type { BitableMetal, RefusedMetal } from '../facts/metals.ts';
import type { SaltId } from '../facts/salts.ts';
import type { ResistKind } from '../facts/resists.ts';
import type { SupplyKind } from '../facts/supplies.ts';

/**
 * The words that a job's answers are chosen from. A word's place in its list is its number in printed codes,
 * and these must stay readable for years. So add new words at the end, and never move or remove one. A test
 * pins every place.
 */

/** A list of words that compiles only when it holds every word of a union. */
const all =
  <T extends string>() =>
  <const L extends readonly T[]>(list: L & ([T] extends [L[number]] ? unknown : 'a word is missing')): L =>
    list;

/** A disc is computed as a square of the same area, a band as if laid flat. */
export const shapes = ['rectangle', 'disc', 'band'] as const;
export type Shape = (typeof shapes)[number];

/** Which faces of a sheet are bare. The front faces the plate. */
export const faces = ['front', 'back', 'both'] as const;
export type Faces = (typeof faces)[number];

/** How the bare area is known. A share is less accurate than an area. */
export const areaKinds = ['area', 'share', 'later'] as const;

/**
 * What is attached to the piece and needs care. Attachments that rule out a bath are refused metals instead.
 */
export const attachments = ['seams', 'stones', 'glue', 'hinges'] as const;
export type Attachment = (typeof attachments)[number];

/** How current reaches the piece. */
export const hangers = ['wire', 'hole', 'tab', 'rack'] as const;
export type Hanger = (typeof hangers)[number];

export const tubKinds = ['box', 'round', 'jug'] as const;

export const waters = ['deionised', 'distilled', 'rain', 'tap'] as const;
export type Water = (typeof waters)[number];

/** What a supply keeps constant; the other of the two is its limit. */
export const controls = ['volts', 'amps'] as const;

export const uses = ['home', 'selling', 'teaching'] as const;
export type Use = (typeof uses)[number];

/** How the gas leaves the room. */
export const openings = ['window', 'outdoors', 'none'] as const;
export type Opening = (typeof openings)[number];

/** What a workshop may have beside its supply: what is measured with, what is worn, what things stand in. */
export const equipment = [
  'thermometer',
  'multimeter',
  'calliper',
  'goggles',
  'gloves',
  'tray',
  'jar',
] as const;
export type Equipment = (typeof equipment)[number];

export const papers = ['A4', 'Letter'] as const;

export const resists = all<ResistKind>()([
  'nail-varnish',
  'paint-pen',
  'permanent-marker',
  'vinyl',
  'toner',
  'dry-film',
  'asphaltum',
]);

export const supplies = all<SupplyKind>()([
  'bench',
  'adapter',
  'battery',
  'alternating',
  'dimmer',
  'unknown',
  'mains',
  'home-made',
  'car-battery',
]);

export const metalIds = all<BitableMetal | RefusedMetal>()([
  'fine-silver-999',
  'sterling-925',
  'C11000',
  'C26000',
  'stainless',
  '304',
  '316',
  'chrome-plated',
  'nichrome',
  'Al-6061',
  'gold',
  'gold-filled',
  'silver-plated',
  'plated',
  'galvanised',
  'unknown',
  'unknown-yellow',
  'cadmium-solder',
  'titanium',
  'silver-935-lowtarnish',
  'coin-900',
  'C22000',
  'C23000',
  'C27000',
  'C27200',
  'C28000',
  'C36000',
  'C51000',
  'C75200',
  'mild-steel',
  'Al-1100',
  'niobium',
  'pewter',
  'unknown-white',
]);

/** As bought: each hydrate is a word of its own. */
export const saltIds = all<SaltId>()([
  'NaNO3',
  'KNO3',
  'NaCl',
  'CuSO4',
  'CuSO4.5H2O',
  'Na2SO4',
  'Na2SO4.10H2O',
  'KCl',
  'K2SO4',
  '(NH4)2SO4',
  'NH4Cl',
  'NH4NO3',
  'Cu(NO3)2',
  'ZnSO4',
  'AgNO3',
  'NaHCO3',
  'Na2CO3',
  'citric',
  'Na3cit',
  'NaOAc',
  'Na2S2O3',
  'MgSO4',
  'FeCl3',
]);

export const elementIds = all<ElementSymbol>()([
  'Ag',
  'Cu',
  'Zn',
  'Sn',
  'Ni',
  'Fe',
  'Cr',
  'Al',
  'Au',
  'Pb',
  'Mn',
  'Mo',
  'Ge',
  'Si',
  'Mg',
  'P',
]);
