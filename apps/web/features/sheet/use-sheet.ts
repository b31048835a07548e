import type { VisitProposal } from '@halfshaft/bayplan';
import type { PersonId } from '@halfshaft/worklog';
import { useMemo } from 'react';
import type { Visit } from '../service/visit';
import type { LoadedWork } from '../work/work-page';
import { sheetOfVisit } from './sheet-of-visit';
import type { SheetOfService } from './sheet-rows';
import { useSheetPeople } from './use-sheet-people';
import { useVisitPlan } from './use-visit-plan';

/** What a sheet shows, once it is known who does what: by the plan, or why there is none. */
export interface PlannedSheet {
  proposal: VisitProposal;
  sheet: SheetOfService;
}

/** The sheet of a service for whoever is there; null while the plan is being made. */
export function useSheet(
  work: LoadedWork,
  visit: Visit,
): { people: PersonId[]; setPeople: (people: PersonId[]) => void; planned: PlannedSheet | null } {
  const { replica, state } = work;
  const [people, setPeople] = useSheetPeople(work, visit);
  const proposal = useVisitPlan(work, visit, people);
  const planned = useMemo(() => {
    if (!proposal) return null;
    const plan = proposal.kind === 'plan' ? proposal : null;
    return { proposal, sheet: sheetOfVisit({ replica, state }, visit, people, plan) };
  }, [replica, state, visit, people, proposal]);
  return { people, setPeople, planned };
}
