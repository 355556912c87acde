import { limits } from '../../core/facts/limits.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { Figures } from '../../core/plan/plan.ts';
import { figureParts, phrase } from './render.ts';
import { datumText, withSymbol } from './units.ts';

/** What to watch for while it runs, such as heat and gas, one line for each. */
export function runWatch(
  figures: Figures,
  units: ReadingUnits,
  readable: readonly ('amps' | 'volts' | 'celsius')[],
): readonly string[] {
  const shown = (id: keyof Figures): string | null => {
    const figure = figures[id];
    if (!figure) return null;
    const { number, unit } = figureParts(figure, units);
    return withSymbol(number, unit);
  };
  // degrees that nothing there can read are no help
  const hasThermometer = readable.includes('celsius');
  const [warm, hot] = [shown('minutes_to_warn_temperature'), shown('minutes_to_stop_temperature')];
  const [end, hydrogen] = [shown('bath_temperature_end'), shown('hydrogen')];
  const [likely, limit] = [shown('chlorine_likely'), shown('minutes_to_chlorine_limit')];
  return [
    ...(warm && hasThermometer
      ? [
          phrase(
            `Left on, the bath is at {warnTemperature} after about ${warm}${hot ? `, at {stopTemperature} after ${hot}` : ''}.`,
            {},
            units,
          ),
        ]
      : []),
    ...(end && hasThermometer ? [`At the end of the planned time it is near ${end}.`] : []),
    ...(hydrogen ? [`Hydrogen rises, ${hydrogen} in all: no lid, no flame.`] : []),
    ...(likely && limit
      ? [
          `Chlorine: at most ${likely} while the metal bites. ${readable.includes('amps') ? 'Amps falling below half are' : 'A pool smell, or bubbles that stop at the plate, is'} the sign of more: the room reaches ${datumText(limits.chlorineShort)} ${limit} later. Supply off, leave, air it.`,
        ]
      : []),
  ];
}
