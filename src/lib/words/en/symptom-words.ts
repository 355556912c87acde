import type { SymptomBench } from '../../core/facts/symptoms.ts';
import { retireAfter } from '../../core/facts/treatment.ts';
import { plain } from './locale.ts';
import { withUnit } from './units.ts';

/** What a bench may be told that depends on what it has. */
export const wordsFor = ({ hasKnobs, showsAmps, isBattery, family, holdsSilver, anion }: SymptomBench) => ({
  /** how less current is made to pass */
  gentler:
    hasKnobs === null
      ? 'take less current, or hang the plate further off'
      : !hasKnobs
        ? 'hang the plate further off'
        : showsAmps === false
          ? 'set fewer volts'
          : 'set fewer amps',
  /** how a current that collapses is seen */
  falls:
    showsAmps === null
      ? 'the current falls away'
      : showsAmps
        ? 'the amps fall away'
        : 'the bubbles at the plate grow few',
  dead:
    isBattery === null
      ? 'Pull the plug, or take a lead off at the battery.'
      : isBattery
        ? 'Take a lead off at the battery, or its fuse out.'
        : 'Pull the plug.',
  idle: hasKnobs ? 'a knob at zero' : 'a supply that gives nothing',
  isSilver: family === null ? null : family === 'silver',
  isBronze: family === null ? null : family === 'bronze',
  holdsSilver,
  isChloride: anion === null ? null : anion === 'chloride',
  isNitrate: anion === null ? null : anion === 'nitrate',
  /** when a silver bath is retired; a supply without amps leaves that to the app to count */
  retire: showsAmps === false ? '' : ` (${withUnit(plain(retireAfter.silverNitrate.value), 'A.h/L')})`,
});
export type SymptomWords = ReturnType<typeof wordsFor>;

/** What is said where it is so, where it is not, and of both where nothing says which. */
export const either = (is: boolean | null, so: string, not: string, both: string): string =>
  is === null ? both : is ? so : not;
