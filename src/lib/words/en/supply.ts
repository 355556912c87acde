import { supplyNames } from './materials.ts';
import { sentenceCase } from './render.ts';
import { storedText } from './stored-text.ts';
import { withUnit } from './units.ts';

/** The screen that asks for the supply. */
export const supplyTexts = {
  title: 'What gives the current?',
  kinds: [
    { value: 'bench', label: 'Bench supply', hint: 'with knobs for volts and amps' },
    { value: 'adapter', label: 'Plug-in adapter', hint: 'fixed volts, DC on its label' },
    { value: 'battery', label: 'Battery with a fuse' },
    { value: 'alternating', label: 'AC adapter or transformer', hint: 'AC on its label' },
    { value: 'car-battery', label: 'Car battery or charger' },
    { value: 'home-made', label: 'Something home-made' },
    { value: 'unknown', label: 'I cannot tell' },
  ],
  showsAmps: [
    { value: 'yes', label: 'Yes', hint: 'or a multimeter in its line does' },
    { value: 'no', label: 'No' },
  ],
  another: 'Another one',
  forget: 'I no longer have this one',
  onLabel: 'that its knob can hold; empty without such a knob',
  onLabelOrEmpty: 'as its label says; empty if it does not',
};

/** What was said of a supply, by field of a draft, as typed. */
type SupplyAnswers = Readonly<
  Partial<Record<'supply.kind' | 'supply.amps' | 'supply.volts' | 'supply.maxAmps', string>>
>;

/** A supply of the workshop in one line, as the maker described it. */
export function supplyName(answers: SupplyAnswers): string {
  const { 'supply.kind': kind = '', 'supply.volts': volts = '', 'supply.maxAmps': maxAmps = '' } = answers;
  return [
    sentenceCase(storedText(supplyNames, kind)),
    ...(kind === 'bench' || volts === '' ? [] : [withUnit(volts, 'V')]),
    ...(maxAmps === '' ? [] : [`up to ${withUnit(maxAmps, 'A')}`]),
    ...(answers['supply.amps'] === 'yes' ? ['shows amps'] : []),
  ].join(', ');
}
