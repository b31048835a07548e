import { existsSync, readFileSync } from 'node:fs';
import { SourceMap, type SourceMapPayload } from 'node:module';
import { dirname, join } from 'node:path';
import { zippedBytes } from '../support/page-weight';
import { PAGES_FOLDER } from '../support/screens';

/** Whose code it is: what runs every page (React, Next, the loader of the bundler), other libraries, or the product's own. */
export type Part = 'framework' | 'libraries' | 'ours';

const FRAMEWORK =
  /node_modules\/(?:next|react|react-dom|scheduler|@swc\/helpers)\/|^turbopack:\/\/\/\[turbopack\]/;

/** Gzipped bytes by part: each file's bytes are shared out by the characters that its source map gives to each part. */
export function weighParts(paths: readonly string[]): Record<Part, number> {
  const sum = { framework: 0, libraries: 0, ours: 0 };
  for (const path of paths) {
    const characters = charactersByPart(path);
    const all = characters.framework + characters.libraries + characters.ours;
    for (const part of ['framework', 'libraries', 'ours'] as const)
      sum[part] += (zippedBytes([path]) * characters[part]) / all;
  }
  return sum;
}

function charactersByPart(path: string): Record<Part, number> {
  const file = join(PAGES_FOLDER, path);
  const code = readFileSync(file, 'utf8');
  const counts = { framework: 0, libraries: 0, ours: 0 };
  const name = /\/\/# sourceMappingURL=(\S+)\s*$/.exec(code)?.[1];
  const mapFile = name === undefined ? '' : join(dirname(file), decodeURIComponent(name));
  if (!existsSync(mapFile)) return { ...counts, ours: code.length };
  const map = new SourceMap(JSON.parse(readFileSync(mapFile, 'utf8')) as SourceMapPayload);
  code.split('\n').forEach((line, number) => {
    for (let column = 0; column < line.length; column += 1) {
      const entry = map.findEntry(number, column);
      counts[partOf('originalSource' in entry ? entry.originalSource : '')] += 1;
    }
  });
  return counts;
}

/** What no source stands behind is the bundler's. */
function partOf(source: string): Part {
  if (source === '' || FRAMEWORK.test(source)) return 'framework';
  return source.includes('node_modules/') ? 'libraries' : 'ours';
}
