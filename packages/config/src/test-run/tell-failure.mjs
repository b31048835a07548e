import { stripVTControlCharacters } from 'node:util';

const FAILURES_BEGIN = /Failed Tests|Failed Suites|Unhandled Errors/;
const MOST_LINES = 120;

/**
 * What Vitest's `output` tells of a run that failed, short enough to stand again at the end of everything: an error outside
 * of any test fails a run too, and far up among the others it would not be found. Without such a part, the last lines.
 */
export function tellFailure(output) {
  const lines = output.trimEnd().split('\n');
  const begin = lines.findIndex((line) => FAILURES_BEGIN.test(stripVTControlCharacters(line)));
  return begin === -1
    ? lines.slice(-MOST_LINES).join('\n')
    : lines.slice(begin, begin + MOST_LINES).join('\n');
}
