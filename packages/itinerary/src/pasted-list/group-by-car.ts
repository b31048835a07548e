/** What belongs to each car, in the order of the list. */
export function groupByCar<Item>(items: readonly Item[], carOf: (item: Item) => string): Map<string, Item[]> {
  const cars = new Map<string, Item[]>();
  for (const item of items) cars.set(carOf(item), [...(cars.get(carOf(item)) ?? []), item]);
  return cars;
}
