const PULSES = [0, 0.45, 0.9];
const PULSE = 0.28;
/** Hz: carries through a closed door, and a phone's small speaker has it */
const PITCH = 880;
const LOUD = 0.6;

let sound: AudioContext | null = null;

/** Lets the bell sound later. Browsers grant that only inside a tap, so every look before power asks for it. */
export function unlockBell(): void {
  if (!('AudioContext' in globalThis)) return;
  sound ??= new AudioContext();
  if (sound.state !== 'running') sound.resume().catch(() => undefined);
}

/** The same once the tap has been answered on screen: making a bell takes a phone a while, and the tap still counts. */
export function unlockBellSoon(): void {
  requestAnimationFrame(() => {
    setTimeout(unlockBell, 0);
  });
}

/** Three pulses, and three shakes where the phone can. */
export function ring(): void {
  if (sound) {
    for (const after of PULSES) {
      const start = sound.currentTime + after;
      const tone = sound.createOscillator();
      const volume = sound.createGain();
      tone.frequency.value = PITCH;
      // a bare start and end click
      volume.gain.setValueAtTime(0, start);
      volume.gain.linearRampToValueAtTime(LOUD, start + 0.02);
      volume.gain.setValueAtTime(LOUD, start + PULSE - 0.03);
      volume.gain.linearRampToValueAtTime(0, start + PULSE);
      tone.connect(volume).connect(sound.destination);
      tone.start(start);
      tone.stop(start + PULSE);
    }
  }
  if ('vibrate' in navigator) navigator.vibrate([280, 170, 280, 170, 280]);
}

/** Whether the bell would be heard now, as far as a page can know. */
export const canRing = (): boolean => sound?.state === 'running';

/** Rests the bell between runs, so that an idle page takes no power. */
export function restBell(): void {
  sound?.suspend().catch(() => undefined);
}
