// After the pages are built: lists their files with a revision each, and bundles the service worker with that list.
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { getManifest } from '@serwist/build';
import { build } from 'esbuild';

const WEB = join(import.meta.dirname, '..');
const OUT = join(WEB, 'out');
const LARGEST_FILE_BYTES = 4 * 1024 * 1024;

const { manifestEntries = [], warnings } = await getManifest({
  globDirectory: OUT,
  globPatterns: ['**/*.{html,txt,js,css,woff2,svg,png,webmanifest}'],
  globIgnores: ['service-worker.js', 'built-from.txt', '404*', '404/**', '_not-found/**'],
  // Their names carry a hash of what is in them already.
  dontCacheBustURLsMatching: /^_next\/static\//,
  maximumFileSizeToCacheInBytes: LARGEST_FILE_BYTES,
  modifyURLPrefix: { '': '/' },
});
if (warnings.length > 0)
  throw new Error(`The list of the pages' files is not whole:\n${warnings.join('\n')}`);

const { outputFiles } = await build({
  entryPoints: [join(WEB, 'offline/service-worker.ts')],
  bundle: true,
  minify: true,
  write: false,
  format: 'iife',
  target: 'es2022',
  define: {
    'self.PAGES_OF_THE_BUILD': JSON.stringify(manifestEntries),
    'process.env.NODE_ENV': '"production"',
  },
});
await writeFile(join(OUT, 'service-worker.js'), outputFiles[0]?.contents ?? '');
