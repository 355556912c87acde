import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces';
import { stencilTexts } from '$words/papers.ts';
import { language } from '$words/locale.ts';
import { scaleBar } from './drawing/scale-bar.ts';
import type { StencilOrder } from './order.ts';
import { faces, ink, mm, pageSizes } from './paper.ts';
import { place } from './place.ts';
import { copiesOn, PAGE } from './stencil-page.ts';

/** Decimals of a millimetre in a path: no printer is finer than a thousandth. */
const DIGITS = 3;

/** The design as one path, mm: dark where there is resist, or where metal is bare. */
function pathOf({ loops, width, height, isNegative }: StencilOrder): string {
  const at = (value: number): string => String(Number(value.toFixed(DIGITS)));
  const own = loops.map((loop) => `M${loop.map(([x, y]) => `${at(x)} ${at(y)}`).join('L')}Z`).join('');
  return isNegative ? `M0 0H${at(width)}V${at(height)}H0Z${own}` : own;
}

/** The stencil in its true size, as many copies as asked for and as fit on the page. */
export function stencil(order: StencilOrder): TDocumentDefinitions {
  const { paper, width, height, scale, isMirrored, copies } = order;
  const page = pageSizes[paper];
  const [wide, high] = [mm(width * scale), mm(height * scale)];
  const turned = isMirrored ? ` transform="translate(${String(width)} 0) scale(-1 1)"` : '';
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${String(wide)}" height="${String(high)}" viewBox="0 0 ${String(width)} ${String(height)}"><g${turned}><path d="${pathOf(order)}" fill="#000" fill-rule="evenodd"/></g></svg>`;
  const { columns, rows } = copiesOn(order);
  const count = Math.min(copies, columns * rows);
  const [left, top] = [mm(PAGE.margin), mm(PAGE.margin)];
  const content: Content[] = [{ text: ' ', fontSize: 1 }];
  for (let n = 0; n < count; n += 1) {
    const x = left + (n % columns) * (wide + mm(PAGE.apart));
    const y = top + Math.floor(n / columns) * (high + mm(PAGE.apart));
    content.push(
      { svg, width: wide, absolutePosition: { x, y } },
      {
        absolutePosition: { x, y },
        canvas: [
          {
            type: 'rect',
            x: 0,
            y: 0,
            w: wide,
            h: high,
            lineWidth: 0.3,
            dash: { length: 2 },
            lineColor: ink.soft,
          },
        ],
      },
    );
  }
  const foot = page.height - mm(PAGE.margin) - mm(PAGE.foot - 6);
  const note = [isMirrored ? stencilTexts.mirrored : stencilTexts.straight, stencilTexts.bar].join(' ');
  content.push(
    place(left, foot, mm(110), {
      stack: [scaleBar(), { text: stencilTexts.length, fontSize: 9, margin: [0, 2, 0, 6] }],
    }),
    place(left, foot + mm(11), page.width - 2 * left, { text: note, fontSize: 9, lineHeight: 1.1 }),
  );
  return {
    pageSize: page,
    pageMargins: [left, top, left, top],
    language,
    displayTitle: true,
    version: '1.7',
    info: {
      title: stencilTexts.title,
      creator: 'Etchwright',
      producer: 'Etchwright',
      creationDate: new Date(0),
    },
    defaultStyle: { font: faces.text, fontSize: 11, color: ink.black },
    content,
  };
}
