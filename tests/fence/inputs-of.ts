import type { Variant } from './fixture';
import type { World } from './world';

/**
 * Valid input of each fixture for one world, made on first use and kept. For calls that are all refused: since none of
 * them changes anything, one world serves for all.
 */
export function inputsOf(world: World): (variant: Variant) => Promise<object> {
  const inputs = new Map<string, object>();
  return async (variant) => {
    const input = inputs.get(variant.name) ?? ((await variant.make(world)) as object | undefined) ?? {};
    inputs.set(variant.name, input);
    return input;
  };
}
