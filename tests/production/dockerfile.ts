import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './compose';

export interface Stage {
  name: string;
  from: string;
  steps: { word: string; rest: string }[];
}

/** The stages of a Dockerfile of the repository, in order. */
export function readStages(path: string): Stage[] {
  const stages: Stage[] = [];
  for (const line of readFileSync(join(ROOT, path), 'utf8').split('\n')) {
    const [, word = '', rest = ''] = /^([A-Z]+) (.+)$/.exec(line) ?? [];
    if (word === 'FROM') {
      const [from = '', , name = ''] = rest.split(' ');
      stages.push({ name, from, steps: [] });
    } else if (word) stages.at(-1)?.steps.push({ word, rest });
  }
  return stages;
}

/** What the last stage copies from stages before: where from in the repository, and where to. */
export function listCopies(stages: Stage[]): { from: string; to: string }[] {
  const copies = stages.at(-1)?.steps.filter((step) => step.word === 'COPY') ?? [];
  return copies.map(({ rest }) => {
    const [source = '', to = ''] = rest.split(' ').filter((part) => !part.startsWith('--'));
    return { from: source.replace(/^\/app\//, ''), to };
  });
}

/** The command that the image runs. */
export function commandOf(stages: Stage[]): string[] {
  const step = stages.at(-1)?.steps.find((each) => each.word === 'CMD');
  return JSON.parse(step?.rest ?? '[]') as string[];
}
