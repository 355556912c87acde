const PULSES = [0, 0.45, 0.9];
const PULSE = 0.28;
/** Hz: carries through a closed door, and even a phone's small speaker can play it */
const PITCH = 880;
const LOUD = 0.6;

let sound: AudioContext | null = null;

/**
 * Allows the bell to sound later. Browsers only allow it inside a tap, so every look before power asks for
 * it.
 */
export function unlockBell(): void {
  if (!('AudioContext' in globalThis)) return;
  sound ??= new AudioContext();
  if (sound.state !== 'running') sound.resume().catch(() => undefined);
}

/**
 * The same, but after the screen has answered the tap: making a bell is slow on a phone, and the tap still
 * counts.
 */
export function unlockBellSoon(): void {
  requestAnimationFrame(() => {
    setTimeout(unlockBell, 0);
  });
}

/** Sounds three pulses, and vibrates three times on phones that can. */
export function ring(): void {
  if (sound) {
    for (const after of PULSES) {
      const start = sound.currentTime + after;
      const tone = sound.createOscillator();
      const volume = sound.createGain();
      tone.frequency.value = PITCH;
      // without a ramp, the start and end of a pulse would click
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

/** Whether the bell can be heard now, as far as a page can tell. */
export const canRing = (): boolean => sound?.state === 'running';

/** Suspends the bell between runs, so that an idle page uses no power. */
export function restBell(): void {
  sound?.suspend().catch(() => undefined);
}
