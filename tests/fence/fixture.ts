import type { Caller } from '../support/house';
import type { World } from './world';

/** Who a procedure is for, from the narrowest standing that may call it. */
export type Needs = 'anyone' | 'account' | 'member' | 'manager' | 'admin' | 'organiser';

/** One way to call a procedure well. */
export interface Variant {
  /** The procedure's path, and what is special about this way. */
  name: string;
  path: string;
  needs: Needs;
  /** Valid input for the owner of this fresh world; may prepare what the call needs. */
  make(world: World): Promise<unknown> | unknown;
  /** Ids the client makes up itself, so one that never existed is right. */
  made: string[];
  /** Fields that hold the secret of a link. */
  secrets: string[];
}

type InputOf<Path extends string> = Path extends `${infer Noun}.${infer Verb}`
  ? Noun extends keyof Caller
    ? Verb extends keyof Caller[Noun]
      ? Caller[Noun][Verb] extends (...input: infer Inputs) => unknown
        ? Inputs[0]
        : never
      : never
    : never
  : never;

interface Options {
  special?: string;
  made?: string[];
  secrets?: string[];
}

/** One line of the table. The input is held to the procedure's own type. */
export function variant<Path extends string>(
  path: Path,
  needs: Needs,
  make: (world: World) => Promise<InputOf<Path>> | InputOf<Path>,
  { special, made = [], secrets = [] }: Options = {},
): Variant {
  return { name: special ? `${path} (${special})` : path, path, needs, make, made, secrets };
}
