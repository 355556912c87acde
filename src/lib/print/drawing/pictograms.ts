import type { Pictogram } from '../../core/facts/substances.ts';
import { ink, mm } from '../paper.ts';
import { round } from './hatch.ts';

/**
 * Hazard pictograms, drawn from the description in CLP Annex V: a square on its corner, red frame, black
 * symbol on white. Each symbol is drawn in a field of 100 × 100 from corner to corner.
 */
const symbols: Readonly<Record<Pictogram, string>> = {
  // flame over a line
  GHS02:
    '<path d="M37 65C27 54 34 46 37 36c4 4 5 7 6 10 3-8 0-17 8-27 1 12 9 15 10 28 2-3 3-6 2-10 9 9 11 20 4 29-1-4-3-6-6-8-1-6-5-8-6-13-4 6-10 9-9 16-2-1-3-3-3-5-3 2-5 5-6 9zM32 70h36v6H32z" fill="#000"/>',
  // flame over circle
  GHS03:
    '<circle cx="50" cy="60" r="11" fill="none" stroke="#000" stroke-width="6"/>' +
    '<path d="M33 77.5H67" stroke="#000" stroke-width="5"/>' +
    '<path d="M37 49C29 40 35 34 37 27C40 30 41.500 33 42 36C44 29 42 22 49 14C49.500 23 56 25 56.500 34C58 32 58.500 30 58.500 27C66 34 68 43 62 50C60 46.500 56 44 50 44C44 44 40 45.500 37 49Z" fill="#000"/>',
  // two tubes pour onto a bar and onto a hand
  GHS05:
    '<g fill="#fff" stroke="#000" stroke-width="2.2">' +
    '<path d="M22.500 43.500L42 33.500L44.300 38L24.800 48Q20 48 22.500 43.500Z"/>' +
    '<path d="M53 33L72.500 43Q75 47.500 70.200 47.500L50.700 37.500Z"/></g>' +
    '<path d="M46.300 41q2.400 4.600 0 6.200q-2.400-1.600 0-6.200zM46.300 50.500q2.400 4.600 0 6.200q-2.400-1.600 0-6.200zM53.600 41q2.400 4.600 0 6.200q-2.400-1.600 0-6.200zM53.600 50q2.400 4.600 0 6.200q-2.400-1.600 0-6.200z" fill="#000" transform="translate(0 1)"/>' +
    '<path d="M26 62H40C41 66 44.500 66.500 46 63.500V62H47.500V70.500H29Z" fill="#000"/>' +
    '<path d="M75.500 56C70 55.500 66 57.500 60 60L52.500 62.500C50.500 63.300 51.300 65.800 53.500 65.400L60 64.500C57 66.500 54.500 68.500 53 70.500C52 72.500 54 74 55.800 72.700C60 70 66 71.500 70 69L75.500 66Z" fill="#000"/>',
  // skull over crossed bones
  GHS06:
    '<path d="M50 22C39 22 33 29 33 38C33 44 36 47.500 40 49.500V56H60V49.500C64 47.500 67 44 67 38C67 29 61 22 50 22Z" fill="#000"/>' +
    '<path d="M38.500 38a4.800 4.800 0 1 0 9.600 0a4.800 4.800 0 1 0-9.600 0M51.900 38a4.800 4.800 0 1 0 9.600 0a4.800 4.800 0 1 0-9.600 0M50 43.500L47.500 48.500H52.500Z" fill="#fff"/>' +
    '<path d="M45 56V51M50 56V51M55 56V51" stroke="#fff" stroke-width="1.200"/>' +
    '<path d="M31 60L69 76M69 60L31 76" stroke="#000" stroke-width="5.500" stroke-linecap="round"/>',
  // exclamation mark
  GHS07:
    '<path d="M42.500 24Q42.500 20 50 20Q57.500 20 57.500 24L54.300 59H45.700Z" fill="#000"/>' +
    '<circle cx="50" cy="70.500" r="6.200" fill="#000"/>',
  // a person's head and chest with a star burst in it
  GHS08:
    '<path d="M50 18C44.500 18 41 22 41 27.500C41 31.500 43 34.500 45.500 36V40C36 42 30 47 29 56V77H71V56C70 47 64 42 54.500 40V36C57 34.500 59 31.500 59 27.500C59 22 55.500 18 50 18Z" fill="#000"/>' +
    '<path d="M50 46L53 54L61 49.500L56.500 57.500L65 60L56.500 62.500L61 70.500L53 66L50 75L47 66L39 70.500L43.500 62.500L35 60L43.500 57.500L39 49.500L47 54Z" fill="#fff"/>',
  // a bare tree and a dead fish by the water
  GHS09:
    '<path d="M42.500 67C43.500 58 43 52 41 46L33 40L34 38.500L40.500 42L37.500 31L39.300 30.500L42.500 39L44 23L46 23L46 38L51.500 29.500L53 30.500L48 42L55 38L55.800 39.500L48.500 47C47.500 54 48.500 60 50 67Z" fill="#000"/>' +
    '<path d="M25 66.500H52C50 69 56 72.500 64 71L62 73L58 75H41C39 72.500 35 71.500 31.500 72.500Z" fill="#000"/>' +
    '<path d="M54 63C58 57.500 66 57 71 61.500L77.500 57.500C76.300 61.500 76.300 64.500 77.500 68.500L71 65C66 69 58 68.500 54 63Z" fill="#fff" stroke="#000" stroke-width="2"/>' +
    '<path d="M57.500 61l2.600 2.600m0-2.600l-2.600 2.600" stroke="#000" stroke-width="1.200"/><path d="M63.500 59.500q2 3.500 0 7" fill="none" stroke="#000" stroke-width="1.200"/>',
};

/** Side of the frame, mm; the law requires at least 10. */
export const pictogramSide = 13;

/** Diagonal of the frame, pt. */
export const pictogramAcross = mm(pictogramSide) * Math.SQRT2;

export const pictogram = (code: Pictogram): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${round(pictogramAcross)}" height="${round(pictogramAcross)}" viewBox="0 0 100 100">` +
  `<path d="M50 3.400L96.600 50L50 96.600L3.400 50Z" fill="#fff" stroke="${ink.frame}" stroke-width="4.800" stroke-linejoin="miter"/>` +
  `${symbols[code]}</svg>`;
