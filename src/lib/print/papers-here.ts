import rare from 'pdfmake/fonts/Roboto/Roboto-Regular.ttf?url';
import light from '@expo-google-fonts/atkinson-hyperlegible-next/300Light/AtkinsonHyperlegibleNext_300Light.ttf?url';
import regular from '@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf?url';
import halfBold from '@expo-google-fonts/atkinson-hyperlegible-next/600SemiBold/AtkinsonHyperlegibleNext_600SemiBold.ttf?url';
import bold from '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf?url';
import type { PressOrder } from './order.ts';
import type { PapersQuestion, PapersReply } from './papers.worker.ts';

const files = { light, regular, halfBold, bold, rare };

/** Absolute addresses of the fonts: inside a worker, relative ones would be wrong. */
const fonts = () =>
  Object.fromEntries(
    Object.entries(files).map(([weight, url]) => [weight, new URL(url, location.href).href]),
  ) as unknown as typeof files;

let worker: Worker | null = null;
let asked = 0;

/** Makes papers in their own worker. It is started on the first call and kept. */
export function makePapersHere(wanted: PressOrder): Promise<Blob> {
  worker ??= new Worker(new URL('./papers.worker.ts', import.meta.url), { type: 'module' });
  const press = worker;
  asked += 1;
  const id = asked;
  return new Promise((resolve, reject) => {
    const settle = (outcome: () => void): void => {
      press.removeEventListener('message', onReply);
      press.removeEventListener('error', onError);
      outcome();
    };
    const onReply = ({ data }: MessageEvent<PapersReply>): void => {
      if (data.id !== id) return;
      settle(() => {
        if (data.ok) resolve(data.blob);
        else reject(new Error(data.error));
      });
    };
    const onError = ({ message }: ErrorEvent): void => {
      // a worker that failed to load never answers, so the next call starts another
      worker = null;
      settle(() => {
        reject(new Error(message));
      });
    };
    press.addEventListener('message', onReply);
    press.addEventListener('error', onError);
    press.postMessage({ id, wanted, fonts: fonts() } satisfies PapersQuestion);
  });
}
