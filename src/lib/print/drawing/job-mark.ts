import type { Content } from 'pdfmake/interfaces';
import { mm } from '../paper.ts';
import type { JobMarks } from '../order.ts';
import { qrCode } from './qr.ts';

/** The QR code without any text. @param side of its square, with its quiet zone, mm */
export const jobMark = ({ carried }: JobMarks, side: number): Content => ({
  svg: qrCode(carried, side).svg,
  width: mm(side),
});
