import type { Settings } from './settings.ts';

/** A job that was handed over has no title of its own. */
export const HANDED_OVER = 'From a sheet';

const amount = (value: number | undefined, unit: string) => (value === undefined ? {} : { value, unit });
const mm = (value: number | undefined) => amount(value, 'mm');

function pieceFile(settings: Settings): object {
  const { shape, sizes, areaFrom, area, at } = settings;
  const [first, second] = sizes;
  const size =
    shape === 'disc'
      ? { diameter: mm(first) }
      : shape === 'band'
        ? { length: mm(first), width: mm(second) }
        : { width: mm(first), height: mm(second) };
  return {
    metal: settings.metal,
    shape,
    ...size,
    thickness: mm(settings.thickness),
    faces: settings.faces,
    ...(area === null ? {} : areaFrom === 'share' ? { openShare: area } : { openArea: amount(area, 'cm2') }),
    depth: mm(settings.depth),
    count: settings.count,
    through: settings.through,
    attached: settings.attached,
    ...(at === null ? {} : { at: { y: mm(at.y), z: mm(at.z) } }),
  };
}

function tubFile({ tub, tubSizes: [first, second, third] }: Settings): object {
  if (tub === 'jug') return { waterByJug: amount(first, 'mL') };
  return tub === 'round'
    ? { diameter: mm(first), fill: mm(second) }
    : { length: mm(first), width: mm(second), fill: mm(third) };
}

function supplyFile({ supply, control, volts, amps, showsAmps, leads }: Settings): object {
  const limits =
    control === 'amps'
      ? { amps: amount(amps ?? undefined, 'A'), maxVolts: amount(volts, 'V') }
      : { volts: amount(volts, 'V'), ...(amps === null ? {} : { maxAmps: amount(amps, 'A') }) };
  return {
    kind: supply,
    control,
    ...limits,
    showsAmps,
    ...(leads === null ? {} : { leads: amount(leads, 'ohm') }),
  };
}

/** The job file that settings stand for. What the maker never handed over stands at its default. */
export const jobFileOf = (settings: Settings): object => ({
  etchwright: 1,
  title: HANDED_OVER,
  piece: pieceFile(settings),
  cathode: {
    metal: settings.cathode,
    width: mm(settings.cathodeWidth),
    height: mm(settings.cathodeHeight),
    gap: mm(settings.gap),
    sideways: mm(settings.sideways),
    faces: settings.cathodeFaces,
  },
  tub: tubFile(settings),
  bath: {
    salt: settings.salt,
    strength: amount(settings.strength, 'g/L'),
    water: settings.water,
    temperature: amount(settings.temperature, 'degC'),
    dissolved: Object.fromEntries(
      settings.dissolved.map(({ element, held }) => [element, amount(held, 'mg/L')]),
    ),
    chargePassed: amount(settings.chargePassed, 'A.h'),
  },
  ...(settings.hanger === null ? {} : { hanger: settings.hanger }),
  resist: { kind: settings.resist },
  supply: supplyFile(settings),
});
