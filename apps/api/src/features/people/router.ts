import {
  addPersonInput,
  addPersonOutput,
  listPeopleInput,
  listPeopleOutput,
  revokeMembershipInput,
  setRoleInput,
} from '@halfshaft/contract';
import { router, teamProcedure } from '../../trpc';
import { addPerson, listPeople, revokeMembership, setRole } from './service';

export const peopleRouter = router({
  list: teamProcedure
    .input(listPeopleInput)
    .output(listPeopleOutput)
    .query(({ ctx }) => listPeople(ctx.tx)),

  add: teamProcedure
    .input(addPersonInput)
    .output(addPersonOutput)
    .mutation(({ ctx, input }) => addPerson(ctx.tx, input.name, ctx.now)),

  setRole: teamProcedure
    .input(setRoleInput)
    .mutation(({ ctx, input }) => setRole(ctx.tx, input.membershipId, input.role)),

  revoke: teamProcedure
    .input(revokeMembershipInput)
    .mutation(({ ctx, input }) => revokeMembership(ctx.tx, input.membershipId, ctx.now)),
});
