declare global {
  /** the app's version, put in by the build */
  const __APP_VERSION__: string;
  namespace App {}
}

export {};
