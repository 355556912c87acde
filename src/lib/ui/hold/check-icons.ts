import type { IconName } from '../drawing/icons.ts';

/** Drawings beside checks, for things that can be drawn. A drawing must never give away the right answer. */
export const checkIcons: Readonly<Record<string, IconName>> = {
  'goggles-for-salt': 'goggles',
  'gloves-for-salt': 'glove',
  'jar-says': 'jar',
  'bath-is': 'jar',
  'tub-holds': 'tub',
  between: 'plate',
  air: 'window',
  dressed: 'goggles',
  'mask-holds': 'piece',
  hands: 'glove',
  rim: 'jar',
  'goggles-lifting': 'goggles',
  'first-rinse': 'drop',
  colour: 'look',
  container: 'jar',
};
