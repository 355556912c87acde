/**
 * The folder of the language that is built, from the project's root. Whatever bundles the app lets `$words` stand for
 * it, so that site, command line and benches speak alike.
 */
export const wordsFolder = `src/lib/words/${process.env.ETCHWRIGHT_LANGUAGE ?? 'en'}`;
