import { toSi } from '../../src/lib/core/units/convert.ts';
import { check, near } from './check.ts';

check('yard1959', '1 in is 25.4 mm exactly', () => {
  near(toSi(1, 'in', 'length') * 1e3, 25.4, 1e-15);
});
check('yard1959', '1 oz is 28.349523125 g exactly', () => {
  near(toSi(1, 'oz', 'mass') * 1e3, 28.349523125, 1e-15);
});
