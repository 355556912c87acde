/** Terms of the trade, each explained at its first use in a job. */
export type TradeWord = 'bite' | 'resist' | 'electrode' | 'bath' | 'electrolyte';

export const tradeWords: Readonly<Record<TradeWord, { readonly word: string; readonly means: string }>> = {
  bite: {
    word: 'Bite',
    means: 'The current takes metal off wherever it is bare. Etchers call that a bite: deep or shallow.',
  },
  resist: {
    word: 'Resist',
    means: 'What you cover the metal with: varnish, paint or a sticker. Under it the metal stays as it is.',
  },
  electrode: {
    word: 'Electrode',
    means:
      'Metal that leads current into the liquid. There are two: your piece on plus, which is bitten, and a plate on minus opposite.',
  },
  bath: { word: 'Bath', means: 'The liquid in the tub, with piece and plate hanging in it.' },
  electrolyte: {
    word: 'Electrolyte',
    means:
      'What a bath is made of: water with a salt in it, so that it carries current. Pure water would not.',
  },
};

/** Label of the link that opens the explanations. */
export const whatAre = (words: readonly TradeWord[]): string =>
  `Words: ${words.map((word) => tradeWords[word].word.toLowerCase()).join(', ')}`;
