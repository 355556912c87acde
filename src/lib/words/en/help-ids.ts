/**
 * Emergencies that help covers. Kept apart from the texts, so that the shell of every page need not load
 * them.
 */
export const troubleIds = ['eye', 'skin', 'swallowed', 'gas', 'fire', 'shock', 'cut', 'yellow'] as const;
export type TroubleId = (typeof troubleIds)[number];

export const isTrouble = (id: string): id is TroubleId => troubleIds.some((known) => known === id);
