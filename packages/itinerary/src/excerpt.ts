const LONGEST_EXCERPT = 40;

/** A cell as a message quotes it: whole, or its beginning when a whole paragraph was pasted into it. */
export function excerpt(cell: string): string {
  return cell.length <= LONGEST_EXCERPT ? cell : `${cell.slice(0, LONGEST_EXCERPT - 1)}…`;
}
