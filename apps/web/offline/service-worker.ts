import { type PrecacheEntry, Serwist, type SerwistGlobalConfig } from 'serwist';

declare global {
  interface WorkerGlobalScope extends SerwistGlobalConfig {
    /** Every file of this build with its revision; the build puts the list in. */
    readonly PAGES_OF_THE_BUILD: PrecacheEntry[];
  }
}
declare const self: ServiceWorkerGlobalScope;

/**
 * Keeps the pages of one build on the phone, so that the bay opens without a network. Answers of the API are not kept
 * here: the pages keep what they know of an event themselves, and know how old it is.
 */
const pages = new Serwist({
  precacheEntries: self.PAGES_OF_THE_BUILD,
  precacheOptions: {
    // Ids stand in the query string and mean nothing to a static page.
    ignoreURLParametersMatching: [/.*/],
    directoryIndex: 'index.html',
    cleanURLs: false,
    cleanupOutdatedCaches: true,
  },
  // A new build waits until a person says so or every page is closed: nobody's screen changes under a thumb.
  skipWaiting: false,
  clientsClaim: true,
});

pages.addEventListeners();
