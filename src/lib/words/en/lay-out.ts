import type { LayOutId } from '../../core/plan/lay-out.ts';

/** What to buy or lay out before the work begins; the amounts come from the plan. */
export const layOutTexts: Readonly<Record<LayOutId, string>> = {
  sheet: 'Sheet to etch: {metal}, {thickness} thick, {count} to bite',
  plate: 'A plate to hang opposite: {plate}, {width} by {height}; scrap will do',
  tub: 'The tub, plastic or glass, never used for food again',
  'rinse-tubs': 'Two more tubs for rinsing, filled with water before you begin',
  tray: 'A tray with a rim that holds all of the bath',
  salt: 'At least {mass} of {salt}, in its own labelled jar',
  water: 'At least {water} of {kind} for the bath, and tap water to rinse',
  'stock-jug':
    'A large jug for mixing, never used for food again, and a jar with a label for what is left over',
  bath: 'The bath {record} from your shelf',
  jar: 'A jar with a lid for the bath, never for food, and its printed label',
  resist: 'The resist: {resist}',
  remover: 'A little {remover} to take the resist off',
  leads: '{wires} clips with wires, of two colours',
  supply: 'The supply of your workshop, on a dry shelf beside the tub and higher',
  battery: 'The battery, charged, with its fuse, beside the tub and higher',
  scale: 'The scale, for the salt',
  'fine-scale': 'The fine scale, for salt and piece',
  thermometer: 'The thermometer',
  multimeter: 'The multimeter',
  calliper: 'The calliper or depth gauge',
  goggles: 'Splash goggles',
  gloves: 'Nitrile gloves, two pairs',
  apron: 'An apron',
  tongs: 'Plastic tongs, a plastic spoon, kitchen paper, a bag for the phone',
  cleaning: 'Fine abrasive and a soft brush',
  hanger: 'Wire of the piece’s own metal to hang it by, and tape',
};
