import { listBringInsInput, listBringInsOutput } from '@halfshaft/contract';
import { router, teamProcedure } from '../../trpc';
import { listBringIns } from './service';

export const bringInRouter = router({
  list: teamProcedure
    .input(listBringInsInput)
    .output(listBringInsOutput)
    .query(({ ctx, input }) => listBringIns(ctx.tx, input.eventId)),
});
