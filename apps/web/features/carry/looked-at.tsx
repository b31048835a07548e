import type { LookOutcome } from '@halfshaft/contract';
import { formatClock, formatDay } from '@halfshaft/itinerary';
import { useState } from 'react';
import { Button } from '@/components/button';
import { SelectField } from '@/components/select-field';
import { Sheet } from '@/components/sheet';
import { counted, lookInWords } from './report-words';

interface LookedAtProps {
  look: LookOutcome;
  fileName: string;
  /** What is being waited for, or null. */
  busy: string | null;
  onTake: (person: string | undefined) => void;
}

/** What is in the file and what bringing it in does; then the button. */
export function LookedAt({ look, fileName, busy, onTake }: LookedAtProps) {
  const { people, pictures } = look;
  const [person, setPerson] = useState(people.find(({ madeTheFile }) => madeTheFile)?.personId);
  const photos = pictures.filter(({ isMissing }) => isMissing).length;
  return (
    <Sheet title={`${look.teamName}: ${look.eventName}`}>
      <p>
        From {fileName}: {counted(look.cars, 'car')}, {counted(look.entries, 'entry', 'entries')} in the log,{' '}
        {counted(pictures.length, 'photo')}. Saved {savedInWords(look.madeAt)}.
      </p>
      <p>{lookInWords(look)}</p>
      {people.length === 0 && photos > 0 ? <p>{counted(photos, 'photo')} will follow.</p> : null}
      {people.length > 0 ? (
        <SelectField
          label="Who are you?"
          hint="What you do here is logged under this name, here and at home."
          value={person}
          options={people.map(({ personId, name }) => ({ value: personId, label: name }))}
          onChange={(event) => setPerson(event.target.value)}
        />
      ) : null}
      <div>
        <Button look="main" busy={busy !== null} busyWords={busy ?? ''} onClick={() => onTake(person)}>
          Bring it in
        </Button>
      </div>
    </Sheet>
  );
}

function savedInWords(at: number): string {
  const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
  const seconds = Math.floor(at / 1000);
  return `${formatDay(seconds, timeZone)}, ${formatClock(seconds, timeZone)}`;
}
