import { currentLimits } from '../../core/run/alarms.ts';
import type { Cause, Departure } from '../../core/run/departure.ts';
import { plain } from './locale.ts';

/** Why a run departs from its plan, and what to do first: power off wherever it could hurt somebody. */
const causes: Readonly<Record<Cause, { readonly is: string; readonly act: string }>> = {
  'resist-lifts': {
    is: 'resist is lifting, more metal is bare',
    act: 'Stop. Supply off, meter at zero, then lift the piece and look at the mask.',
  },
  'clip-wet': {
    is: 'a clip or its wire has come into the bath',
    act: 'Stop. Supply off, meter at zero, then lift the clip out, dry it, and hang it higher.',
  },
  contact: {
    is: 'a clip or wire is loose',
    act: 'Stop. Supply off, meter at zero, then clean and tighten each joint from supply to piece.',
  },
  film: {
    is: 'a film grows on the metal, or the bath is used up',
    act: 'Stop. Supply off, meter at zero, then lift the piece and brush it under water. At a pool smell leave and air the room.',
  },
  warm: {
    is: 'the bath is warm',
    act: 'Turn the amps down, or stop and let it cool.',
  },
  bridged: {
    is: 'silver grows in trees from the plate towards the piece',
    act: 'Stop. Supply off, meter at zero, then push the trees off with a plastic stick.',
  },
};

/** What a run shows: how far it is off, the likely cause, and the safe next step. */
export function departureTexts({ causes: found, ratio }: Departure): {
  readonly change: string;
  readonly likely: string;
  readonly act: string;
} {
  const [first, ...others] = found;
  const share = plain(100 * Math.abs(ratio - 1), 2);
  const change =
    Math.abs(ratio - 1) < currentLimits.told
      ? ''
      : ratio > 1
        ? `For each volt ${share} % more current flows than at first.`
        : `For each volt ${share} % less current flows than at first.`;
  const or = others.map((cause) => causes[cause].is).join(', or ');
  return {
    change,
    likely: first ? `Likely ${causes[first].is}${or === '' ? '' : `; or ${or}`}.` : '',
    act: first ? causes[first].act : '',
  };
}
