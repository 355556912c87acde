import type { HoldId } from '$lib/procedure/checks.ts';
import type { StatePath } from '$lib/procedure/state-paths.ts';
import { bathQuestions } from './bath/questions.ts';
import { electrodeQuestions } from './electrodes/questions.ts';
import { mixingQuestions, recipeQuestions } from './electrolyte/questions.ts';
import { lookingQuestions, runningQuestions, stoppingQuestions } from './etch/questions.ts';
import { metalQuestions } from './metal/questions.ts';
import { rinsingQuestions } from './neutralise/questions.ts';
import type { Question } from './questions.ts';
import { resistQuestions } from './resist/questions.ts';
import { settingsQuestions } from './settings/questions.ts';
import { sheetQuestions } from './sheet/questions.ts';
import { stripBetweenQuestions, stripRunningQuestions, stripStoppingQuestions } from './strip/questions.ts';

/** What a state of the procedure shows: a hold's checks, or questions in order. */
export type Screen = { readonly hold: HoldId } | { readonly questions: readonly Question[] };

/** Complete by type: a state without its screen does not compile. */
export const screens: Readonly<Record<StatePath, Screen>> = {
  metal: { questions: metalQuestions },
  electrodes: { questions: electrodeQuestions },
  'electrolyte.recipe': { questions: recipeQuestions },
  'electrolyte.hold': { hold: 'mixing' },
  'electrolyte.mixing': { questions: mixingQuestions },
  resist: { questions: resistQuestions },
  settings: { questions: settingsQuestions },
  'etch.hold': { hold: 'power' },
  'etch.running': { questions: runningQuestions },
  'etch.stopping': { questions: stoppingQuestions },
  'etch.looking': { questions: lookingQuestions },
  'etch.strip-hold': { hold: 'power' },
  'etch.strip-running': { questions: stripRunningQuestions },
  'etch.strip-stopping': { questions: stripStoppingQuestions },
  'etch.strip-between': { questions: stripBetweenQuestions },
  'neutralise.hold': { hold: 'lifting' },
  'neutralise.rinsing': { questions: rinsingQuestions },
  'bath.hold': { hold: 'storing' },
  'bath.stored': { questions: bathQuestions },
  sheet: { questions: sheetQuestions },
};
