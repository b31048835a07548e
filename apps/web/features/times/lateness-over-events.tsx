import type { timeFiguresOutput } from '@halfshaft/contract';
import type { z } from 'zod';
import { Disclosure } from '@/components/disclosure';
import { Sheet } from '@/components/sheet';
import { trendInWords } from '@/lib/trend-in-words';
import { RowLink } from '../events/row-link';
import { timesAddress } from '../organiser/organiser-addresses';
import { LatenessTable } from './lateness-table';

export interface LatenessOverEventsProps {
  organiserId: string;
  over: z.infer<typeof timeFiguresOutput>;
}

/** How late cars left their services at each event, whether that changes, and each service behind. */
export function LatenessOverEvents({ organiserId, over: { events, trend } }: LatenessOverEventsProps) {
  const byEvent = events.map(({ publishedEventId, name, lateness }) => ({
    key: publishedEventId,
    name: <RowLink href={timesAddress(organiserId, publishedEventId)}>{name}</RowLink>,
    figures: lateness.all,
  }));
  const byService = events.flatMap(({ publishedEventId, name, lateness }) =>
    lateness.services.map((service) => ({
      key: `${publishedEventId} ${service.serviceId}`,
      name: `${name}, service ${service.serviceId}`,
      figures: service,
    })),
  );
  return (
    <Sheet title="Late out of service">
      <p>Cars that left any service late, from event to event: {trendInWords(trend)}.</p>
      <LatenessTable caption="Late out of service by event" nameHeading="Event" rows={byEvent} />
      <Disclosure summary="Service by service" printOpen>
        <LatenessTable caption="Late out of service by service" nameHeading="Service" rows={byService} />
      </Disclosure>
    </Sheet>
  );
}
