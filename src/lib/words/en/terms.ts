import { materialNames } from './fields.ts';
import { reasons } from './reasons.ts';

/** Words for ids: metals, salts, kinds, misfits. */
export const terms: Readonly<Record<string, string>> = {
  ...reasons,
  ...materialNames,
  'water-deionised': 'deionised water',
  'water-distilled': 'distilled water',
  'water-rain': 'rain water',
  'water-tap': 'tap water',
  'white-spirit': 'white spirit',
  'white-spirit-nitrate': 'white spirit',
  acetone: 'acetone',
  alcohol: 'alcohol',
  'acetone-nitrate': 'acetone',
  'alcohol-nitrate': 'alcohol',
  tooTall: 'the piece is taller than the liquid is deep',
  tooWide: 'piece or plate is wider than the tub',
  tooLong: 'piece, gap and plate are longer than the tub',
  tooMany: 'the pieces together are larger than the tub’s cross-section',
  'fill-to': 'fill this tub to at least',
  'tub-across': 'take a tub that is inside at least',
  'tub-long': 'take a tub that is inside at least',
  'plate-narrow': 'take a plate no wider than',
  'plate-near': 'bring the plate to within',
  'hang-most': 'pieces to hang at once, at most:',
  'tub-holds': 'fill a larger tub with at least',
  crowded: 'the parts would push out more than half of the liquid',
  'group-silver': 'SILVER',
  'group-copper': 'COPPER AND BRASS',
  'group-brass': 'COPPER AND BRASS',
  'group-bronze': 'COPPER AND BRASS',
  'group-nickel': 'NICKEL',
  'group-iron': 'IRON',
  'never-silver':
    'Never let a silver bath meet ammonia or ammonium salts: the crust can explode. No acid, no bleach, no paper or solvent left wet with it.',
  'never-nitrate':
    'Never add acid to a nitrate bath: brown poisonous gas. No ammonia, no bleach, no paper, sugar or solvent left wet with it.',
  'never-chloride':
    'Never let a used salt-water bath meet acid, vinegar or bleach: chlorine. No ammonia either.',
  'never-sulfate': 'Never let a copper bath meet ammonia, acid or bleach. No aluminium or zinc in it.',
};
