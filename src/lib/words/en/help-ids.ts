/** What a maker may need help with at once. Apart from the texts, which the shell of every page is spared. */
export const troubleIds = ['eye', 'skin', 'swallowed', 'gas', 'fire', 'shock', 'cut', 'yellow'] as const;
export type TroubleId = (typeof troubleIds)[number];

export const isTrouble = (id: string): id is TroubleId => troubleIds.some((known) => known === id);
