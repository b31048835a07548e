/** Widest usual figure or capital of the strip's lettering, and the air around a label. */
const LETTER_PIXELS = 9;
const AIR_PIXELS = 8;

interface Labelled {
  fromX: number;
  toX: number;
  text: string;
}

export interface LabelSlot extends Labelled {
  /** 0 is the row next to the line; further ones stand above it. */
  row: number;
}

/** Something tall beside the line, such as a service's box: no label may stand on it in the rows it reaches into. */
interface Blocked {
  fromX: number;
  toX: number;
}

const ROWS_BLOCKED = 2;

/**
 * Gives every label the lowest row in which it touches no other. Labels come in driving order, each centred over its
 * own piece of the line.
 */
export function placeLabels<Item extends Labelled>(
  items: readonly Item[],
  blocked: readonly Blocked[],
): (Item & LabelSlot)[] {
  const endOfRow: number[] = [];
  return items.map((item) => {
    const middle = (item.fromX + item.toX) / 2;
    const half = (item.text.length * LETTER_PIXELS + AIR_PIXELS) / 2;
    const onBox = blocked.some((box) => middle - half < box.toX && middle + half > box.fromX);
    let row = onBox ? ROWS_BLOCKED : 0;
    while ((endOfRow[row] ?? Number.NEGATIVE_INFINITY) > middle - half) row += 1;
    endOfRow[row] = middle + half;
    return { ...item, row };
  });
}
