import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { listFiles } from './list-files.mjs';

// The patterns are put together from pieces so that this file does not contain what it looks for.
const HOMES = ['work', 'root', 'home', 'Users'].join('|');
const HOSTS = ['npmjs', 'yarnpkg', 'npmmirror'].map((name) => `registry\\.${name}`).join('|');

const BANNED = [
  {
    pattern: new RegExp(`(?<![\\w.@$}-]|:/)/(?:${HOMES})/(?=[\\w.])`),
    says: 'names a folder of one machine; write the path from the root of the project.',
  },
  {
    pattern: new RegExp(HOSTS, 'i'),
    says: 'names a package registry; which registry is used is the machine’s setting, not the project’s.',
  },
];

/** Every line under `root` that ties the project to one machine or one registry, as sentences. */
export function checkWords(root) {
  return listFiles(root).flatMap((path) => {
    const bytes = readFileSync(join(root, path));
    const isText = !bytes.subarray(0, 8192).includes(0);
    return isText ? checkText(path, bytes.toString('utf8')) : [];
  });
}

function checkText(path, text) {
  return text
    .split('\n')
    .flatMap((line, index) =>
      BANNED.filter(({ pattern }) => pattern.test(line)).map(({ says }) => `${path}:${index + 1}: ${says}`),
    );
}
