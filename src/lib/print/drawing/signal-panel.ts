import type { Content } from 'pdfmake/interfaces';
import type { SignalWord } from '../../core/rules/rule.ts';
import { ink } from '../paper.ts';
import { typeset } from '../typeset.ts';
import { svg } from './hatch.ts';

/**
 * The four panels. Each has its own word, sign and line width, so that they can be told apart in a black
 * print.
 */
const panels: Readonly<
  Record<SignalWord, { fill: string; on: string; rule: number; sign: 'solid' | 'half' | 'open' | 'none' }>
> = {
  DANGER: { fill: ink.danger, on: '#ffffff', rule: 3, sign: 'solid' },
  WARNING: { fill: ink.warning, on: '#000000', rule: 1.9, sign: 'half' },
  CAUTION: { fill: ink.caution, on: '#000000', rule: 1, sign: 'open' },
  NOTICE: { fill: '#ffffff', on: ink.notice, rule: 0.5, sign: 'none' },
};

/** The warning triangle: white on the panel, black on it, or as an outline. */
function alertSign(sign: 'solid' | 'half' | 'open'): string {
  const [body, mark] =
    sign === 'solid' ? ['#fff', ink.danger] : sign === 'half' ? ['#000', '#fff'] : ['none', '#000'];
  return svg(
    16,
    14,
    `<path d="M8 1L15.2 13.2H0.8Z" fill="${body}" stroke="${sign === 'solid' ? '#fff' : '#000'}" stroke-width="1.2" stroke-linejoin="round"/>` +
      `<path d="M7.1 4.6h1.8l-0.4 4.6h-1z" fill="${mark}"/><circle cx="8" cy="11" r="1" fill="${mark}"/>`,
  );
}

/** A safety message as ANSI Z535 lays it out: the signal word in its panel, the message beside it. */
export function signalPanel(signal: SignalWord, text: string, fontSize = 9.5): Content {
  const { fill, on, rule, sign } = panels[signal];
  const word: Content = { text: signal, bold: true, fontSize: 11, color: on, characterSpacing: 0.4 };
  const panel: Content =
    sign === 'none'
      ? { ...word, alignment: 'center' }
      : {
          columns: [
            { svg: alertSign(sign), width: 22 },
            { ...word, width: 'auto' },
          ],
          columnGap: 0,
        };
  return {
    table: {
      widths: [87, '*'],
      dontBreakRows: true,
      body: [
        [
          { stack: [panel], fillColor: fill, verticalAlignment: 'middle' },
          { text: typeset(text), fontSize, lineHeight: 0.96, verticalAlignment: 'middle' },
        ],
      ],
    },
    layout: {
      hLineWidth: () => rule,
      vLineWidth: (i) => (i === 1 ? Math.min(rule, 1) : rule),
      hLineColor: () => ink.black,
      vLineColor: () => ink.black,
      paddingLeft: (i) => (i === 0 ? 6 : 8),
      paddingRight: () => 6,
      paddingTop: () => 4,
      paddingBottom: () => 4,
    },
    margin: [0, 2, 0, 3],
  };
}
