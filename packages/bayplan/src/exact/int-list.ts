/** A list of whole numbers that grows; what lies beyond `length` is left over and means nothing. */
export class IntList {
  items = new Int32Array(16);
  length = 0;

  push(item: number): void {
    if (this.length === this.items.length) {
      const larger = new Int32Array(2 * this.length);
      larger.set(this.items);
      this.items = larger;
    }
    this.items[this.length] = item;
    this.length += 1;
  }
}

/** One number of an array, like `at`, but only ever of one kind of array: the hottest loops are twice as fast for it. */
export function read(array: Int32Array, index: number): number {
  return array[index] as number;
}
