'use client';

import { debriefLines, type PersonId } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import { Sheet } from '@/components/sheet';
import { TextArea } from '@/components/text-area';
import * as z from '@/lib/zod';
import { useDraft } from '../bay/use-draft';
import type { Visit } from '../service/visit';
import type { LoadedWork } from '../work/work-page';
import { DebriefLine } from './debrief-line';
import styles from './road.module.css';
import { takeOffer } from './take-offer';

/** `taken`: which snag or fact each accepted offer became, by its key. */
const debrief = z.object({ text: z.string(), taken: z.record(z.string(), z.string()) });
const EMPTY = { text: '', taken: {} };

interface DebriefSheetProps {
  work: LoadedWork;
  visit: Visit;
  by: PersonId;
}

/** The scribe types while the crew speaks; each line is offered as what it may be, and becomes that by a tap. */
export function DebriefSheet({ work, visit, by }: DebriefSheetProps) {
  const { entry, service } = visit;
  const [draft, setDraft] = useDraft(`debrief.${entry.entryId}.${service.id}`, debrief, EMPTY);
  const lines = debriefLines(draft.text);
  return (
    <Sheet title="Debrief">
      <TextArea
        label="What does the crew say?"
        hint="One thing a line: where on the car, and what. Kept on this phone as you type."
        rows={5}
        maxLength={5000}
        value={draft.text}
        onChange={(event) => setDraft({ ...draft, text: event.target.value })}
      />
      {lines.length === 0 ? null : (
        <>
          <ul className={styles.lines}>
            {lines.map((line) => (
              <DebriefLine
                key={line}
                line={line}
                cards={entry.cards}
                state={work.state}
                taken={draft.taken}
                onTake={(key, offer) =>
                  setDraft({
                    ...draft,
                    taken: { ...draft.taken, [key]: takeOffer(offer, { work, visit, by }) },
                  })
                }
              />
            ))}
          </ul>
          <Button look="quiet" onClick={() => setDraft(EMPTY)}>
            Throw these lines away
          </Button>
        </>
      )}
    </Sheet>
  );
}
