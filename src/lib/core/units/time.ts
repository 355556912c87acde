/** Conversions for clock times, which are kept in milliseconds. */

export const SECOND = 1000;
export const MINUTE = 60 * SECOND;
export const HOUR = 60 * MINUTE;

/** @param ms of wall time @returns min */
export const toMinutes = (ms: number): number => ms / MINUTE;

/** @param minutes any number @returns ms */
export const fromMinutes = (minutes: number): number => minutes * MINUTE;

/** @param hours any number @returns ms */
export const fromHours = (hours: number): number => hours * HOUR;
