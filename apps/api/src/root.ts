import { bayPlanRouter } from './features/bay-plan/router';
import { bringInRouter } from './features/bring-in/router';
import { bulletinRouter } from './features/bulletin/router';
import { carRouter } from './features/car/router';
import { cardRouter } from './features/card/router';
import { eventRouter } from './features/event/router';
import { inviteRouter } from './features/invite/router';
import { organiserRouter } from './features/organiser/router';
import { passwordRouter } from './features/password/router';
import { peopleRouter } from './features/people/router';
import { reliabilityRouter } from './features/reliability/router';
import { retirementRouter } from './features/retirement/router';
import { shareRouter } from './features/share/router';
import { startListRouter } from './features/start-list/router';
import { teamRouter } from './features/team/router';
import { timeListRouter } from './features/time-list/router';
import { workRouter } from './features/work/router';
import { createCaller, router } from './trpc';

export const appRouter = router({
  team: teamRouter,
  people: peopleRouter,
  password: passwordRouter,
  invite: inviteRouter,
  car: carRouter,
  card: cardRouter,
  event: eventRouter,
  work: workRouter,
  bayPlan: bayPlanRouter,
  organiser: organiserRouter,
  bulletin: bulletinRouter,
  startList: startListRouter,
  share: shareRouter,
  bringIn: bringInRouter,
  reliability: reliabilityRouter,
  retirement: retirementRouter,
  timeList: timeListRouter,
});

/** Clients import this type and nothing else. */
export type AppRouter = typeof appRouter;

/** Calls procedures without a network: for the demo and for tests. */
export const callAppRouter = createCaller(appRouter);
export type DemoApi = ReturnType<typeof callAppRouter>;
