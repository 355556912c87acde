import type { SymptomBench } from '../../core/facts/symptoms.ts';
import { retireAfter } from '../../core/facts/treatment.ts';
import { plain } from './locale.ts';
import { withUnit } from './units.ts';

/** Wordings that depend on what the bench has; null in the input means that this is not known. */
export const wordsFor = ({ hasKnobs, showsAmps, isBattery, family, holdsSilver, anion }: SymptomBench) => ({
  /** How to make less current flow. */
  gentler:
    hasKnobs === null
      ? 'take less current, or hang the plate further off'
      : !hasKnobs
        ? 'hang the plate further off'
        : showsAmps === false
          ? 'set fewer volts'
          : 'set fewer amps',
  /** How the maker notices that the current collapses. */
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
  /**
   * When to retire a silver bath. Without an ammeter the maker cannot count, so the app does and no limit is
   * named.
   */
  retire: showsAmps === false ? '' : ` (${withUnit(plain(retireAfter.silverNitrate.value), 'A.h/L')})`,
});
export type SymptomWords = ReturnType<typeof wordsFor>;

/** Chooses the text for yes or no; `both` where the answer is not known. */
export const either = (is: boolean | null, so: string, not: string, both: string): string =>
  is === null ? both : is ? so : not;
