/** What a reading out of order means, and what to do first. */
export const readingTexts = {
  'stop-hot': {
    stop: true,
    text: '40 °C or more: stop now. Resist lifts and gas takes over. Let the bath cool.',
  },
  'volts-high': {
    stop: true,
    text: '10 V or more: stop now, then turn the volts down to what the plan says.',
  },
  'amps-jumped': {
    stop: true,
    text: 'Amps are up by half, or the same amps need far fewer volts: resist is lifting, or the parts touch. Stop and look.',
  },
  'amps-gone': {
    stop: true,
    text: 'Amps have fallen below half, or the same amps need twice the volts: film, a loose clip, or the metal is used up. Stop and look. Salt water gives chlorine then: at a pool smell leave and air the room.',
  },
  warm: {
    stop: false,
    text: '35 °C or more: turn the amps down, or stop and let it cool. Look at the thermometer every minute.',
  },
} as const;
