import { useState } from 'react';
import { SelectField } from '@/components/select-field';
import { Sheet } from '@/components/sheet';
import { CarGate } from '../bay/car-gate';
import { recordablePeople } from '../bay/use-record-for';
import type { Visit } from '../service/visit';
import type { LoadedWork } from '../work/work-page';

/** The box at the top of the paper: who looked before work began, and at what. */
export function RecordGate({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { replica } = work;
  const [person, setPerson] = useState(replica.me.personId);
  const people = recordablePeople(replica.people);
  return (
    <Sheet title="Before work">
      <SelectField
        label="Looked at by"
        options={people.map(({ personId, name }) => ({ value: personId, label: name }))}
        value={person}
        onChange={(event) => setPerson(event.target.value)}
      />
      <CarGate work={work} visit={visit} by={person} />
    </Sheet>
  );
}
