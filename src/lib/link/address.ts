/** What comes before the settings in an address, after the path. */
const KEY = '#start=';

/**
 * The text of a QR code. It is an address that opens the app with these settings, if others can reach the
 * page. It is the bare text if the page came from no secure address, as on a maker's own machine.
 * @param home address of the start page
 */
export function carriedText(text: string, home: URL): string {
  return home.protocol === 'https:' ? `${home.origin}${home.pathname}${KEY}${text}` : text;
}

/** The settings in what was scanned, pasted or opened: a whole address, its last part, or the bare text. */
export function textIn(typed: string): string {
  const at = typed.indexOf(KEY);
  const text = at < 0 ? typed : typed.slice(at + KEY.length);
  return text.trim();
}

/** The settings in the address of this page, or null when it has none. */
export const textInHash = (hash: string): string | null => (hash.startsWith(KEY) ? textIn(hash) : null);
