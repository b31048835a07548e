import { describe, expect, it } from 'vitest';
import { checkWords } from './check-words.mjs';
import { temporaryProject } from './temporary-project.fixture.mjs';

const problemsIn = (text) => checkWords(temporaryProject({ 'docs/a.md': text }));
// Put together from pieces, so that this file passes the check it tests.
const folder = (name) => ['', name, 'main', 'a.ts'].join('/');
const host = (name) => ['https://registry', name, 'org'].join('.');

describe('the words check', () => {
  it.each(['work', 'root', 'home', 'Users'])('refuses a path under /%s', (name) => {
    expect(problemsIn(`one\nsee ${folder(name)}`)).toEqual([
      'docs/a.md:2: names a folder of one machine; write the path from the root of the project.',
    ]);
    expect(problemsIn(`"${folder(name)}"`)).toHaveLength(1);
    expect(problemsIn(`file://${folder(name)}`)).toHaveLength(1);
  });

  it.each(['npmjs', 'yarnpkg', 'npmmirror'])('refuses the registry of %s', (name) => {
    expect(problemsIn(host(name))[0]).toContain('names a package registry');
  });

  it('allows the same words elsewhere in a path, and addresses of pages', () => {
    const fine = [
      'src/work/a.ts',
      './root/a',
      '@/home/a',
      'framework/a',
      'https://docs.example.org/work/a',
      'registry',
    ];
    expect(problemsIn(fine.join('\n'))).toEqual([]);
  });

  it('leaves binary and ignored files alone', () => {
    const root = temporaryProject({
      'a.bin': `\0${folder('work')}`,
      '.gitignore': 'dist/',
      'dist/a.js': folder('work'),
    });
    expect(checkWords(root)).toEqual([]);
  });
});
