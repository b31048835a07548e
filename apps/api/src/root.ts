import { bulletinRouter } from './features/bulletin/router';
import { carRouter } from './features/car/router';
import { cardRouter } from './features/card/router';
import { eventRouter } from './features/event/router';
import { inviteRouter } from './features/invite/router';
import { organiserRouter } from './features/organiser/router';
import { peopleRouter } from './features/people/router';
import { retirementRouter } from './features/retirement/router';
import { startListRouter } from './features/start-list/router';
import { teamRouter } from './features/team/router';
import { workRouter } from './features/work/router';
import { createCaller, router } from './trpc';

export const appRouter = router({
  team: teamRouter,
  people: peopleRouter,
  invite: inviteRouter,
  car: carRouter,
  card: cardRouter,
  event: eventRouter,
  work: workRouter,
  organiser: organiserRouter,
  bulletin: bulletinRouter,
  startList: startListRouter,
  retirement: retirementRouter,
});

/** Clients import this type and nothing else. */
export type AppRouter = typeof appRouter;

/** Calls procedures without a network: for the demo and for tests. */
export const callAppRouter = createCaller(appRouter);
export type DemoApi = ReturnType<typeof callAppRouter>;
