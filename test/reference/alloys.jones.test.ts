import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { check, near } from './check.ts';

check('jones', 'stainless 304, 19 Cr(3) 9.25 Ni(2) 71.75 Fe(2): 25.12 (0.05 %)', () => {
  near(equivalentWeight({ Cr: 19, Ni: 9.25, Fe: 71.75 }, { Cr: 3, Ni: 2, Fe: 2 }), 25.12, 5e-4);
});
