import type { MyTeam } from './choose-team';

/** Describing cars, events and people is for managers of the whole team. The server decides; this only hides ways. */
export function mayManageTeam({ role, eventId }: Pick<MyTeam, 'role' | 'eventId'>): boolean {
  return (role === 'admin' || role === 'manager') && eventId === null;
}
