import type { EventReplica } from '@halfshaft/contract';
import { outCauseInWords, type WorkState } from '@halfshaft/worklog';
import { Notice } from '@/components/notice';
import type { Visit } from '../service/visit';
import { serviceNameOf } from '../work/names';
import { outAt } from './out-at';

export interface OutNoticeProps {
  replica: EventReplica;
  state: WorkState;
  visit: Visit;
}

/** That the car is out by this service, since where, and what that means for the list of work. */
export function OutNotice({ replica, state, visit }: OutNoticeProps) {
  const out = outAt(replica, state, visit);
  if (out === null) return null;
  const { since, forDay, cause } = out;
  const where =
    since === null ? 'the start' : since.kind === 'stage' ? since.id : serviceNameOf(replica, since.id);
  return (
    <Notice kind="warning" title={`Out since ${where}`}>
      {forDay ? 'Out for the day' : 'Out for good'}: {cause ? outCauseInWords(cause) : 'cause not stated'}. No
      work is asked for here; what somebody has taken or closed still stands below. Should the car start
      again, the crew says so on its page of the road here.
    </Notice>
  );
}
