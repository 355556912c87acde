import { isBitable } from '../../core/facts/metals.ts';
import { choiceNames } from './fields.ts';
import { metalNames } from './materials.ts';
import { sentenceCase } from './render.ts';
import { storedText } from './stored-text.ts';
import { dayText } from './times.ts';

/** What a job is called until its maker names it: its metal, its shape and the day it was begun. */
export const ownTitle = (metal: string, shape: string, at: number): string =>
  `${sentenceCase(`${isBitable(metal) ? metalNames[metal] : ''} ${storedText(choiceNames, shape)}`.trim())}, ${dayText(at)}`;

/** The same name on another day. */
export const titleAgain = (title: string, at: number): string =>
  `${title.replace(/, [^,]*\d[^,]*$/, '')}, ${dayText(at)}`;
