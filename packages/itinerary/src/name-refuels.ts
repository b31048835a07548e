import type { TableRow } from './table-row';

/** A refuel printed without a number gets the lowest one that is free: every control needs a name of its own. */
export function nameRefuels(rows: TableRow[]): void {
  const taken = new Set(rows.flatMap((row) => (row.type === 'point' ? [row.id] : [])));
  let number = 1;
  for (const row of rows) {
    if (row.type !== 'point' || row.id !== 'RZ') continue;
    while (taken.has(`RZ${number}`)) number += 1;
    row.name = row.name === 'RZ' ? `RZ${number}` : row.name;
    row.id = `RZ${number}`;
    taken.add(row.id);
  }
}
