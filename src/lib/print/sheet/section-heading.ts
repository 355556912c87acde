import type { Content } from 'pdfmake/interfaces';
import { ink } from '../paper.ts';
import { typeset } from '../typeset.ts';

/** Title of a part of the sheet that is not a step, with a smaller line below it. */
export const sectionHeading = (title: string, note: string): Content => ({
  stack: [
    { text: title, bold: true, fontSize: 17 },
    { text: typeset(note), fontSize: 9, color: ink.soft, lineHeight: 0.97, margin: [0, 1, 0, 6] },
  ],
});
