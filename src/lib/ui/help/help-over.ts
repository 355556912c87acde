import { isTrouble } from '$words/help-ids.ts';
import type { TroubleId } from '$words/help-ids.ts';

/**
 * Which page of help an address is: null for the tiles, undefined for no help at all.
 * @param path of the address
 * @param root path of the tiles
 */
export function helpIn(path: string, root: string): TroubleId | null | undefined {
  if (!path.startsWith(root)) return undefined;
  const [id = ''] = path.slice(root.length).split('/');
  return isTrouble(id) ? id : null;
}
