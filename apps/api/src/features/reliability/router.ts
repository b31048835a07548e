import { reliabilityOfTeamInput, reliabilityOfTeamOutput } from '@halfshaft/contract';
import { router, teamProcedure } from '../../trpc';
import { reliabilityOfTeam } from './service';

export const reliabilityRouter = router({
  ofTeam: teamProcedure
    .input(reliabilityOfTeamInput)
    .output(reliabilityOfTeamOutput)
    .query(({ ctx }) => reliabilityOfTeam(ctx.tx, ctx.now)),
});
