import { at } from './at';

/**
 * Rows of whole numbers over time, each holding from its own moment until that of the next, the last one for ever. Time is
 * cut only where something starts or finishes, so the cost grows with how much is booked, never with the length of time.
 */
export class Cuts {
  readonly width: number;
  readonly times: Int32Array;
  /** Row by row. */
  readonly cells: Int32Array;
  count = 0;

  /** @param most how many rows there may be at once */
  constructor(most: number, width: number) {
    this.width = width;
    this.times = new Int32Array(most);
    this.cells = new Int32Array(most * width);
  }

  /** One row from `time` on, with these numbers. */
  clear(time: number, row: Int32Array): void {
    this.count = 1;
    this.times[0] = time;
    this.cells.set(row);
  }

  /** The row that holds at `time`, which is not before the first. */
  rowAt(time: number): number {
    let row = this.count - 1;
    while (at(this.times, row) > time) row -= 1;
    return row;
  }

  /** Until when the row holds. */
  endOf(row: number): number {
    return row + 1 < this.count ? at(this.times, row + 1) : Number.POSITIVE_INFINITY;
  }

  /** The row that begins at `time`, made if there is none. */
  split(time: number): number {
    const { width, times, cells } = this;
    const row = this.rowAt(time);
    if (at(times, row) === time) return row;
    times.copyWithin(row + 2, row + 1, this.count);
    times[row + 1] = time;
    cells.copyWithin((row + 1) * width, row * width, this.count * width);
    this.count += 1;
    return row + 1;
  }
}
