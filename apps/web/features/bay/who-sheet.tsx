import type { PersonId } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { Notice } from '@/components/notice';
import { SelectField } from '@/components/select-field';
import { Stack } from '@/components/stack';
import { nameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import { recordablePeople } from './use-record-for';

interface WhoSheetProps {
  work: LoadedWork;
  by: PersonId;
  onChoose: (person: PersonId) => void;
}

/** Whose phone this is, and for whom it writes. Loud while it writes for another, since that is easily forgotten. */
export function WhoSheet({ work, by, onChoose }: WhoSheetProps) {
  const { replica } = work;
  const me = replica.me.personId;
  if (by !== me) {
    return (
      <Notice kind="warning" title={`Recording for ${nameOf(replica, by)}`}>
        <p>
          What you tap now was done by {nameOf(replica, by)}, entered by {nameOf(replica, me)}. A second
          signature is given on the task, by name.
        </p>
        <div>
          <Button onClick={() => onChoose(me)}>Back to {nameOf(replica, me)}</Button>
        </div>
      </Notice>
    );
  }
  const others = recordablePeople(replica.people).filter(({ personId }) => personId !== me);
  return (
    <Stack gap="small">
      <p>
        You are <strong>{nameOf(replica, me)}</strong>.
      </p>
      {others.length > 0 ? (
        <Disclosure summary="Record for someone else">
          <SelectField
            label="Done by"
            hint="For people with wet hands or no phone."
            unchosen="Choose a person"
            value=""
            onChange={(event) => onChoose(event.target.value)}
            options={others.map(({ personId, name }) => ({ value: personId, label: name }))}
          />
        </Disclosure>
      ) : null}
    </Stack>
  );
}
