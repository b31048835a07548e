'use client';

import { type JudgedGauge, judgeGauges } from '@halfshaft/lifing';
import { useMemo } from 'react';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { PrintButton } from '@/components/print-button';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { bayAddress, serviceAddress } from '../events/addresses';
import { readingQuestion } from '../service/reading-question';
import type { Visit } from '../service/visit';
import { carNameOf, serviceNameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import { WorkTrouble } from '../work/work-trouble';
import { ReadingTable } from './reading-table';

/** What was read of one car up to a service, place by place: how it has changed, and what is to be expected. */
export function ReadingsScreen({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { replica, state, teamId, eventId } = work;
  const { entry, service } = visit;
  const gauges = useMemo(() => {
    const all = judgeGauges(readingQuestion(replica, state, visit));
    return all.filter(
      (each) => each.series.some(({ readings }) => readings.length > 0) && !standsElsewhere(each, all),
    );
  }, [replica, state, visit]);
  const ids = { team: teamId, event: eventId, car: entry.entryId, at: service.id };
  const car = carNameOf(replica, entry.entryId);
  const serviceName = (id: string) => serviceNameOf(replica, id);
  return (
    <>
      <WorkTrouble work={work} />
      <PageHeader
        above={`${replica.name} · ${car}, ${entry.car.name}`}
        title="Readings"
        facts={[`Up to ${serviceName(service.id)}`]}
        actions={
          <>
            <LinkButton href={serviceAddress(ids)}>To the service</LinkButton>
            <LinkButton href={bayAddress(ids)}>To the bay</LinkButton>
            <PrintButton foot={`Readings up to ${serviceName(service.id)}, ${car}, ${replica.name}`}>
              Print
            </PrintButton>
          </>
        }
      />
      {gauges.length === 0 ? (
        <EmptyState title="Nothing was read yet">
          <p>What is measured when a round or job is closed stands here, place by place.</p>
        </EmptyState>
      ) : (
        <Sheet title="Place by place">
          <Stack gap="large">
            {gauges.map((judged) => (
              <ReadingTable
                key={`${judged.gauge.card.id} ${judged.gauge.spec.id}`}
                judged={judged}
                serviceName={serviceName}
              />
            ))}
          </Stack>
        </Sheet>
      )}
      <p>
        Expected is the worst loss so far and a fifth more, over the stage km ahead; from six readings on, the
        line through them. It is a sum and no promise: look at the part. The one who works on it decides.
      </p>
    </>
  );
}

/** What is read of a new part stands in the table of the place it went to. */
function standsElsewhere({ gauge }: JudgedGauge, all: readonly JudgedGauge[]): boolean {
  return all.some(
    ({ gauge: { remedy, whenNew } }) => remedy.id === gauge.card.id && whenNew?.id === gauge.spec.id,
  );
}
