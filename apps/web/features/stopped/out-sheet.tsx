import { outCauseInWords, type PersonId } from '@halfshaft/worklog';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import type { Visit } from '../service/visit';
import { newId } from '../work/new-id';
import type { LoadedWork } from '../work/work-page';
import { OutDialog } from './out-dialog';
import { outNow } from './out-now';

interface OutSheetProps {
  work: LoadedWork;
  visit: Visit;
  by: PersonId;
}

/** The car drives no further, or goes on again: what a life counted on it must know. */
export function OutSheet({ work, visit, by }: OutSheetProps) {
  const [asking, setAsking] = useState(false);
  const { entryId } = visit.entry;
  const out = outNow(work.state, entryId);
  function startAgain() {
    const at = { kind: 'service' as const, serviceId: visit.service.id };
    const fact = { kind: 'restarted' as const, words: '' };
    work.act('recordFact', { factId: newId(), entryId, at, fact }, by);
  }
  return (
    <Sheet title={out ? 'The car is out' : 'If the car can’t go on'}>
      <Stack gap="small">
        {out ? (
          <>
            <p>
              {out.forDay ? 'Out for the day' : 'Out for good'}:{' '}
              {out.cause ? outCauseInWords(out.cause) : 'cause not stated'}.
            </p>
            <Button wide look="main" onClick={startAgain}>
              It starts again
            </Button>
          </>
        ) : null}
        <Button wide onClick={() => setAsking(true)}>
          {out ? 'Put the cause right' : 'The car is out'}
        </Button>
      </Stack>
      {asking ? <OutDialog work={work} visit={visit} by={by} onClose={() => setAsking(false)} /> : null}
    </Sheet>
  );
}
