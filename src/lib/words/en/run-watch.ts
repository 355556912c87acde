import type { Figures } from '../../core/plan/plan.ts';
import { figureNumber } from './render.ts';
import { withUnit } from './units.ts';

/** What to mind of heat and gas while it runs, a line each. */
export function runWatch(figures: Figures): readonly string[] {
  const shown = (id: keyof Figures): string | null => {
    const figure = figures[id];
    return figure ? withUnit(figureNumber(figure), figure.unit) : null;
  };
  const [warm, hot] = [shown('minutes_to_warn_temperature'), shown('minutes_to_stop_temperature')];
  const [end, hydrogen] = [shown('bath_temperature_end'), shown('hydrogen')];
  const [likely, limit] = [shown('chlorine_likely'), shown('minutes_to_chlorine_limit')];
  return [
    ...(warm
      ? [`Left on, the bath is at 35 °C after about ${warm}${hot ? `, at 40 °C after ${hot}` : ''}.`]
      : []),
    ...(end ? [`At the end of the planned time it stands near ${end}.`] : []),
    ...(hydrogen ? [`Hydrogen rises, ${hydrogen} in all: no lid, no flame.`] : []),
    ...(likely && limit
      ? [
          `Chlorine: at most ${likely} while the metal bites. Amps falling below half are the sign of more: the room reaches 0.5 ppm ${limit} later. Supply off, leave, air it.`,
        ]
      : []),
  ];
}
