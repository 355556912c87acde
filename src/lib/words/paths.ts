import { figureNames } from './figures.ts';
import type { FigureId } from '../core/plan/outcome.ts';

/** What an input path is called when an answer has gone stale over it. */
const names: Readonly<Record<string, string>> = {
  'piece.metal': 'metal',
  'piece.width': 'piece, width (m)',
  'piece.height': 'piece, height (m)',
  'piece.thickness': 'thickness (m)',
  'piece.openArea': 'bare area (m²)',
  'piece.depth': 'depth (m)',
  'piece.count': 'number of pieces',
  'piece.faces': 'bare faces',
  'cathode.metal': 'plate',
  'cathode.gap': 'gap (m)',
  'cathode.width': 'plate, width (m)',
  'cathode.height': 'plate, height (m)',
  'tub.fill': 'liquid (m)',
  'tub.length': 'tub, length (m)',
  'tub.width': 'tub, width (m)',
  'tub.water': 'water (m³)',
  'bath.salt': 'salt',
  'bath.strength': 'strength (g/L)',
  'bath.water': 'water',
  'bath.temperature': 'bath temperature (K)',
  resist: 'resist',
  'supply.volts': 'volts',
  'supply.maxAmps': 'most amps',
  'supply.kind': 'supply',
  'place.use': 'use',
  'place.room': 'room (m³)',
};

export const pathName = (path: string): string =>
  names[path] ?? (Object.hasOwn(figureNames, path) ? figureNames[path as FigureId] : path);
