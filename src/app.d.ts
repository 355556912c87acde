import type { TroubleId } from '$words/help-ids.ts';

declare global {
  /** the app's version, put in by the build */
  const __APP_VERSION__: string;
  namespace App {
    interface PageState {
      /** help laid over the job that is open, and how many taps deep */
      help?: { readonly id: TroubleId | null; readonly depth: number };
    }
  }
}

export {};
