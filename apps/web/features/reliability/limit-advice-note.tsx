import type { PartOutline } from '@halfshaft/contract';
import type { LimitAdvice } from '@halfshaft/reliability';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { Stack } from '@/components/stack';
import { AdoptLimit } from './adopt-limit';
import { adviceInWords, lastsInWords } from './advice-in-words';

interface LimitAdviceNoteProps {
  teamId: string;
  carId: string;
  part: PartOutline;
  advice: LimitAdvice;
}

/** What the log suggests, and the way to take it over. Nothing changes by itself. */
export function LimitAdviceNote({ teamId, carId, part, advice }: LimitAdviceNoteProps) {
  const [adopting, setAdopting] = useState(false);
  if (!part.renews) return <p>{lastsInWords(part, advice)}</p>;
  return (
    <Notice title="What the log suggests">
      <Stack gap="small">
        <p>{adviceInWords(part, advice)}</p>
        {advice.wears ? null : (
          <p>
            That it wears out is not sure yet: it may fail by chance, and a shorter limit may change nothing.
          </p>
        )}
        {part.removed ? null : (
          <div className="screen-only">
            <Button onClick={() => setAdopting(true)}>Change the limit of the card</Button>
          </div>
        )}
      </Stack>
      {adopting ? (
        <AdoptLimit
          teamId={teamId}
          carId={carId}
          part={part}
          advice={advice}
          onClose={() => setAdopting(false)}
        />
      ) : null}
    </Notice>
  );
}
