// Last step of the build: lays a gzipped copy beside every file that gets smaller by it, for the server to send as it is.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

const OUT = join(import.meta.dirname, '..', 'out');
const TEXT = /\.(?:html|txt|js|css|svg|webmanifest)$/;

for (const name of readdirSync(OUT, { recursive: true }).filter((each) => TEXT.test(each))) {
  const path = join(OUT, name);
  writeFileSync(`${path}.gz`, gzipSync(readFileSync(path), { level: 9 }));
}
