// Empty as it is served: the service worker hands it out for any page of this depth that it does not keep,
// and the app then draws what the address names.
export const ssr = false;
