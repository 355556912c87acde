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
  onLabel: 'that its knob can hold; empty without such a knob',
  onLabelOrEmpty: 'as its label says; empty if it does not',
};
