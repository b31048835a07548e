import type { timeFiguresOutput } from '@halfshaft/contract';
import type { z } from 'zod';
import { Disclosure } from '@/components/disclosure';
import { Sheet } from '@/components/sheet';
import { trendInWords } from '@/lib/trend-in-words';
import { RowLink } from '../events/row-link';
import { timesAddress } from '../organiser/organiser-addresses';
import { ControlTable } from './control-table';
import { HowLostIsReckoned } from './how-lost-is-reckoned';

export interface ControlsOverEventsProps {
  organiserId: string;
  over: z.infer<typeof timeFiguresOutput>;
}

/** How late cars came to their other controls at each event, whether that changes, and each control behind. */
export function ControlsOverEvents({ organiserId, over: { events, controlTrend } }: ControlsOverEventsProps) {
  const seen = events.filter(({ controls }) => controls.all.arrivals > 0);
  if (seen.length === 0) return null;
  const byEvent = seen.map(({ publishedEventId, name, controls }) => ({
    key: publishedEventId,
    name: <RowLink href={timesAddress(organiserId, publishedEventId)}>{name}</RowLink>,
    figures: controls.all,
  }));
  const byControl = seen.flatMap(({ publishedEventId, name, controls }) =>
    controls.controls.map((figures) => ({
      key: `${publishedEventId} ${figures.controlId}`,
      name: `${name}, ${figures.controlId}`,
      figures,
    })),
  );
  return (
    <Sheet title="Late at the other controls">
      <p>Cars that came late to any, from event to event: {trendInWords(controlTrend)}.</p>
      <ControlTable caption="Late at the other controls by event" nameHeading="Event" rows={byEvent} />
      <Disclosure summary="Control by control, and how it is reckoned" printOpen>
        <HowLostIsReckoned />
        <ControlTable
          caption="Late at the other controls by control"
          nameHeading="Control"
          rows={byControl}
        />
      </Disclosure>
    </Sheet>
  );
}
