import { LinkButton } from '@/components/link-button';
import { Stack } from '@/components/stack';
import { serviceAddress } from '../events/addresses';
import { carNameOf, serviceNameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import type { Visit } from './visit';

/** The car's other services, and the same service of the team's other cars. */
export function OtherServices({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { replica, teamId, eventId } = work;
  const { entry, service } = visit;
  const ids = { team: teamId, event: eventId };
  const cars = replica.entries.filter((each) => each.entryId !== entry.entryId);
  const services = visit.services.filter((each) => each.id !== service.id);
  if (cars.length === 0 && services.length === 0) return null;
  return (
    <nav aria-label="Other services" className="screen-only">
      <Stack gap="small" across>
        {services.map((each) => (
          <LinkButton key={each.id} href={serviceAddress({ ...ids, car: entry.entryId, at: each.id })}>
            {serviceNameOf(replica, each.id)}
          </LinkButton>
        ))}
        {cars.map((each) => (
          <LinkButton key={each.entryId} href={serviceAddress({ ...ids, car: each.entryId, at: service.id })}>
            {carNameOf(replica, each.entryId)}
          </LinkButton>
        ))}
      </Stack>
    </nav>
  );
}
