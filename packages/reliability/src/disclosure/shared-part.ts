/** What one team shares of one event. `content` names what it says: it changes whenever that does. */
export interface SharedPart {
  readonly team: string;
  readonly event: string;
  readonly content: string;
}

/** What figures were once told about. Kept, without the figures, for as long as anybody may remember them. */
export type Release = readonly SharedPart[];

/** Nothing is told about fewer teams than this. */
export const LEAST_TEAMS = 5;

export function countTeams(parts: readonly SharedPart[]): number {
  return new Set(parts.map(({ team }) => team)).size;
}

export function keyOfPart({ team, event, content }: SharedPart): string {
  return JSON.stringify([team, event, content]);
}
