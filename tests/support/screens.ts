import { resolve } from 'node:path';

/** Where the pages of the last build lie. */
export const PAGES_FOLDER = resolve(import.meta.dirname, '../../apps/web/out');

/** For `openHouse`: the pages as they are served to people. */
export const PAGES = { kind: 'build' as const, folder: PAGES_FOLDER };

export const PHONE = { width: 360, height: 740 };
export const DESK = { width: 1440, height: 900 };
