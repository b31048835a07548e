import { type Itinerary, type ServiceLeave, servicesOf } from '@halfshaft/itinerary';
import { latenessByService } from '@halfshaft/reliability';
import { LatenessTable } from './lateness-table';
import { beyondInWords, lateInWords, overrunInWords } from './lateness-words';

export interface LatenessReportProps {
  leaves: readonly ServiceLeave[];
  itinerary: Itinerary;
  maxLateMinutes: number;
}

/** What the times of one event tell: in sentences, then service by service. */
export function LatenessReport({ leaves, itinerary, maxLateMinutes }: LatenessReportProps) {
  const { all, services } = latenessByService(leaves, maxLateMinutes);
  const windows = new Map(servicesOf(itinerary).map((service) => [service.id, service]));
  const rows = services.map((figures) => {
    const { serviceId } = figures;
    const service = windows.get(serviceId);
    const name = service ? `${serviceId}, ${service.inControl} to ${service.outControl}` : serviceId;
    return { key: serviceId, name, figures };
  });
  const sentences = [lateInWords(all), overrunInWords(all), beyondInWords(all, maxLateMinutes)];
  return (
    <>
      <p>{sentences.filter((sentence) => sentence !== null).join(' ')}</p>
      {rows.length > 0 ? (
        <LatenessTable caption="Late out of service" nameHeading="Service" rows={rows} />
      ) : (
        <p>To tell more, the list needs times at the way out of a service{waysOut(itinerary)}.</p>
      )}
    </>
  );
}

function waysOut(itinerary: Itinerary): string {
  const outs = servicesOf(itinerary).map(({ outControl }) => outControl);
  return outs.length === 0 ? '' : `: ${outs.join(', ')}`;
}
