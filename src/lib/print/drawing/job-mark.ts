import type { Content } from 'pdfmake/interfaces';
import { mm } from '../paper.ts';
import type { JobMarks } from '../order.ts';
import { qrCode } from './qr.ts';

/** The QR code alone. @param side of the square that it has, quiet zone included, mm */
export const jobMark = ({ carried }: JobMarks, side: number): Content => ({
  svg: qrCode(carried, side).svg,
  width: mm(side),
});
