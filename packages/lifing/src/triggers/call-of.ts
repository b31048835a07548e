import { callAfterIncident } from './call-after-incident';
import { callAfterJob } from './call-after-job';
import { callForConditions } from './call-for-conditions';
import { callForNewPart } from './call-for-new-part';
import { callForTemporaryRepair } from './call-for-temporary-repair';
import type { Trigger } from './model';
import type { Call, CalledQuestion } from './questions';

/** Whether one trigger makes one card due at the point that is judged, and why; null when it does not. */
export function callOf(trigger: Trigger, question: CalledQuestion): Call | null {
  switch (trigger.kind) {
    case 'incident':
      return callAfterIncident(trigger, question);
    case 'jobDone':
      return callAfterJob(trigger, question);
    case 'nextConditions':
      return callForConditions(trigger, question);
    case 'newlyFitted':
      return callForNewPart(trigger, question);
    case 'temporaryRepair':
      return callForTemporaryRepair(trigger, question);
  }
}
