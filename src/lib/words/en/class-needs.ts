import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { ClassPack } from '../../core/plan/class-pack.ts';
import type { LayOutId, LayOutLine } from '../../core/plan/lay-out.ts';
import { layOutTexts } from './lay-out.ts';
import { count } from './locale.ts';
import { fill } from './render.ts';

/** What all stations need together; `{times}` is the number, written with its noun. */
interface Need {
  readonly one: string;
  readonly other?: string;
  readonly text: string;
}

const needTexts: Readonly<Record<Exclude<LayOutId, Worn | Shared>, Need>> = {
  sheet: {
    one: 'piece',
    text: '{times} of {metal}, {width} by {height}, {thickness} thick, cleaned beforehand: {area} of sheet, and what the saw takes',
  },
  plate: { one: 'plate', text: '{times} to hang opposite: {plate}, {width} by {height}' },
  tub: { one: 'tub', text: '{times}, plastic or glass, never used for food again' },
  'rinse-tubs': { one: 'rinse tub', text: '{times}; their water is kept as waste' },
  tray: { one: 'tray', text: '{times} with a rim that holds all of a bath' },
  salt: { one: 'bath', text: 'At least {mass} of {salt} for {times}, in its own labelled jar' },
  water: { one: 'bath', text: 'At least {water} of {kind} for {times}, and tap water to rinse' },
  bath: { one: 'station', text: 'The bath {record} from your shelf, for {times}' },
  'stock-jug': { one: 'jug', text: '{times} for mixing, never used for food again' },
  jar: { one: 'jar', text: '{times} with a lid for the baths, never for food again, and the printed labels' },
  resist: { one: 'piece', text: 'The resist for {times}: {resist}' },
  remover: { one: 'piece', text: 'A little {remover} to take the resist off {times}, by an adult' },
  leads: { one: 'clip with its wire', other: 'clips with their wires', text: '{times}, of two colours' },
  supply: {
    one: 'supply',
    other: 'supplies',
    text: '{times}, each on a dry shelf beside its tub and higher',
  },
  battery: {
    one: 'battery',
    other: 'batteries',
    text: '{times}, charged, each with its fuse, beside its tub and higher',
  },
  cleaning: { one: 'set', text: '{times} of fine abrasive and a soft brush' },
  hanger: { one: 'piece', text: 'Wire of the same metal and tape, for {times}' },
  tongs: { one: 'pair', text: '{times} of plastic tongs, a plastic spoon, kitchen paper' },
};

/** Needed once for each person, not for each station. */
const worn = {
  goggles: ({ goggles }) =>
    `${count(goggles, 'pair')} of splash goggles: one for everybody in the room, and spare ones`,
  gloves: ({ gloves }) =>
    `${count(gloves, 'pair')} of whole nitrile gloves, in the sizes of the hands: two for everybody`,
  apron: ({ aprons }) => count(aprons, 'apron'),
} as const satisfies Partial<Record<LayOutId, (pack: ClassPack) => string>>;
type Worn = keyof typeof worn;

/** Needed once for all stations together. */
const shared = ['scale', 'fine-scale', 'thermometer', 'multimeter', 'calliper'] as const;
type Shared = (typeof shared)[number];

const isWorn = (id: LayOutId): id is Worn => Object.hasOwn(worn, id);
const isShared = (id: LayOutId): id is Shared => shared.some((one) => one === id);

function needLine({ id, times, params }: LayOutLine, pack: ClassPack, units: ReadingUnits): string {
  if (isWorn(id)) return worn[id](pack);
  if (isShared(id)) return layOutTexts[id];
  const { one, other, text } = needTexts[id];
  return fill(text, { ...params, times: { text: count(times, one, other) } }, units);
}

/** What to buy and lay out for the whole class, one line for each thing. */
export const needLines = (pack: ClassPack, units: ReadingUnits): readonly string[] => [
  ...pack.needs.map((line) => needLine(line, pack, units)),
  'Eye wash or running water within reach, a first-aid box, a telephone',
];
