import { controlCode } from './control-code';
import { isTotalTitle, legOf } from './row-words';

/**
 * Text whose cells were copied each into a line of its own, with the cells of a row in one line again: from a line that is
 * nothing but a code to the next one. Lines keep their numbers; those that were joined are left blank.
 */
export function joinCellLines(lines: readonly string[]): string[] {
  const joined = lines.map(() => '');
  let row = -1;
  lines.forEach((line, index) => {
    const text = line.trim();
    if (controlCode(text)?.rest === '' || isTotalTitle(text)) row = index;
    else if (legOf(text)) row = -1;
    if (text === '') return;
    const at = row === -1 ? index : row;
    joined[at] = joined[at] === '' ? text : `${joined[at]}  ${text}`;
  });
  return joined;
}
