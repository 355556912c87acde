/** Texts of the screen that asks where the work is done, and for whom. */
export const placeTexts = {
  title: 'Where, and for whom?',
  uses: [
    { value: 'home', label: 'For myself, at home' },
    { value: 'selling', label: 'For sale' },
    { value: 'teaching', label: 'In a class' },
  ],
  openings: [
    { value: 'window', label: 'A window or door' },
    { value: 'outdoors', label: 'I work outdoors' },
    { value: 'none', label: 'Nothing opens' },
  ],
};
