import { isTrouble } from '$words/help-ids.ts';
import type { TroubleId } from '$words/help-ids.ts';

/**
 * The page of help at an address: null for the tiles, undefined if the address is no help page.
 * @param path of the address
 * @param root path of the tiles
 */
export function helpIn(path: string, root: string): TroubleId | null | undefined {
  if (!path.startsWith(root)) return undefined;
  const [id = ''] = path.slice(root.length).split('/');
  return isTrouble(id) ? id : null;
}
