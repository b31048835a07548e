/** A part of the pages that is fetched behind the first screen, so that the first screen comes sooner. */
export interface Later<Part> {
  /** Null until it has come. */
  now(): Part | null;
  /** Fetches it unless it is here. Rejects when it cannot be reached; the next call tries anew. */
  fetch(): Promise<Part>;
}

const parts = new Set<Later<unknown>>();

/**
 * Names a part that is fetched later. `load` says `import('./part')` in so many words: there the build parts it off.
 *
 * @example
 * const DIALOGS = later(() => import('./bay-dialog'));
 */
export function later<Part>(load: () => Promise<Part>): Later<Part> {
  let here: Part | null = null;
  let coming: Promise<Part> | null = null;
  async function fetch(): Promise<Part> {
    try {
      here = await load();
      return here;
    } finally {
      coming = null;
    }
  }
  const part: Later<Part> = {
    now: () => here,
    fetch: async () => {
      if (here !== null) return here;
      coming ??= fetch();
      return coming;
    },
  };
  parts.add(part);
  return part;
}

/**
 * Fetches every part this page knows of: without a service worker (plain http in the van) one that was not fetched while
 * there was a network would be missing out of reach of the server. One that cannot be reached is asked for again when it
 * is needed.
 */
export async function fetchAllLater(): Promise<void> {
  await Promise.allSettled([...parts].map((part) => part.fetch()));
}
