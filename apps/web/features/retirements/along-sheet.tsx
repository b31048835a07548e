import type { RetirementFigures } from '@halfshaft/contract';
import { Disclosure } from '@/components/disclosure';
import { Sheet } from '@/components/sheet';
import { StepChart } from '@/components/step-chart';
import { percentInWords } from '@/lib/percent-in-words';
import { AlongTable } from './along-table';
import { causeInWords } from './cause-words';

type Along = NonNullable<RetirementFigures['figures']['along']>;

/** Of all that started: which share was stopped, for the first time, by which cause, by how far along. */
export function AlongSheet({ along }: { along: Along | null }) {
  if (!along) return null;
  const starts = along.starts === 1 ? '1 start' : `${along.starts} starts`;
  return (
    <Sheet title="How far along they stop">
      <p>
        Of {starts}, the share stopped for the first time, by cause. A car that came back had its first stop
        before.
      </p>
      <Drawing along={along} />
      <Disclosure summary="The shares as a table" printOpen>
        <p>In brackets where the true share lies 19 times in 20.</p>
        <AlongTable along={along} />
      </Disclosure>
    </Sheet>
  );
}

function Drawing({ along: { curves, furthest, starts } }: { along: Along }) {
  const drawn = curves.flatMap(({ cause, steps }) => {
    const last = steps.at(-1);
    if (!last) return [];
    const drawnSteps = steps.map(({ distance, share }) => ({ x: distance, y: share }));
    return [{ key: cause, name: causeInWords(cause), amount: percentInWords(last.share), steps: drawnSteps }];
  });
  if (drawn.length === 0) return <p>Nothing stopped a car so far.</p>;
  return (
    <StepChart
      says={`Of ${starts} cars, the share stopped by each cause along the stages; in the end ${drawn.map(({ name, amount }) => `${name} ${amount}`).join(', ')}.`}
      along="stage km"
      end={furthest}
      write={percentInWords}
      curves={drawn}
    />
  );
}
