import type { HoldId } from '$lib/procedure/checks.ts';
import type { StatePath } from '$lib/procedure/state-paths.ts';
import { bathQuestions } from './bath/questions.ts';
import { electrodeQuestions } from './electrodes/questions.ts';
import { mixingQuestions, recipeQuestions } from './electrolyte/questions.ts';
import {
  lookingQuestions,
  resumingQuestions,
  runningQuestions,
  stoppingQuestions,
} from './etch/questions.ts';
import { metalQuestions } from './metal/questions.ts';
import { rinsingQuestions } from './neutralise/questions.ts';
import type { Question } from './questions.ts';
import { maskingQuestions, resistQuestions } from './resist/questions.ts';
import { knobsQuestions, planQuestions } from './settings/questions.ts';
import { sheetQuestions } from './sheet/questions.ts';
import { stripBetweenQuestions, stripRunningQuestions, stripStoppingQuestions } from './strip/questions.ts';

/** What a state of the procedure shows: the checks of a hold, or questions in order. */
export type Screen = { readonly hold: HoldId } | { readonly questions: readonly Question[] };

/** The type demands an entry for each state, so a state without a screen does not compile. */
export const screens: Readonly<Record<StatePath, Screen>> = {
  metal: { questions: metalQuestions },
  electrodes: { questions: electrodeQuestions },
  'electrolyte.recipe': { questions: recipeQuestions },
  'electrolyte.hold': { hold: 'mixing' },
  'electrolyte.mixing': { questions: mixingQuestions },
  'resist.kind': { questions: resistQuestions },
  'resist.masking': { questions: maskingQuestions },
  'settings.plan': { questions: planQuestions },
  'settings.knobs': { questions: knobsQuestions },
  'etch.hold': { hold: 'power' },
  'etch.running': { questions: runningQuestions },
  'etch.resuming': { questions: resumingQuestions },
  'etch.stopping': { questions: stoppingQuestions },
  'etch.lifting': { hold: 'lifting' },
  'etch.looking': { questions: lookingQuestions },
  'etch.strip-hold': { hold: 'power' },
  'etch.strip-running': { questions: stripRunningQuestions },
  'etch.strip-resuming': { questions: resumingQuestions },
  'etch.strip-stopping': { questions: stripStoppingQuestions },
  'etch.strip-lifting': { hold: 'lifting' },
  'etch.strip-between': { questions: stripBetweenQuestions },
  'neutralise.rinsing': { questions: rinsingQuestions },
  'bath.hold': { hold: 'storing' },
  'bath.stored': { questions: bathQuestions },
  sheet: { questions: sheetQuestions },
};
