/** How long to search before starting afresh, in some unit (Luby, Sinclair & Zuckerman 1993): 1 1 2 1 1 2 4 1 1 2 1 1 2 4 8 … */
export function luby(round: number): number {
  let power = 1;
  while (2 * power - 1 < round) power *= 2;
  return 2 * power - 1 === round ? power : luby(round - power + 1);
}
