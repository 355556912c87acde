/** A job lives in this browser: the page is the same for all and is filled in where it is opened. */
export const ssr = false;
