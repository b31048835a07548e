'use client';

import { keepVisitInput, type Visit } from '@halfshaft/contract';
import { useMutation } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { PageLink } from '@/components/page-link';
import { api, queryClient } from '@/lib/api';
import { KEPT_FORMS } from '@/lib/keep-typed';
import { removeStored } from '@/lib/storage';
import { eventAddress, HOME_ADDRESS } from '../events/addresses';
import { ItineraryProblems } from '../itinerary/itinerary-problems';
import styles from './keep-visit.module.css';
import { KEPT_NAMES_KEY, KeepVisitNames, type KeptNames } from './keep-visit-names';
import { useStoredVisit } from './use-stored-visit';
import { VISIT_KEY } from './visit-form';

/** Makes a team, a car, an event and the car's entry out of what was worked out without an account. */
export function KeepVisit({ personName }: { personName: string }) {
  const stored = useStoredVisit();
  if (stored === undefined) return <LoadingState words="One moment …" />;
  if (stored === null) {
    return (
      <div className={styles.page}>
        <PageHeader title="Keep what you worked out" />
        <EmptyState
          title="There is nothing on this device to keep."
          action={
            <LinkButton look="main" href="/try/">
              Plan a service
            </LinkButton>
          }
        >
          Plan a service first, on this device, or <PageLink href={HOME_ADDRESS}>go to your teams</PageLink>.
        </EmptyState>
      </div>
    );
  }
  return <KeepForm visit={stored.visit} names={{ teamName: '', personName, eventName: stored.eventName }} />;
}

function KeepForm({ visit, names }: { visit: Visit; names: KeptNames }) {
  const router = useRouter();
  const [kept, setKept] = useState(false);
  const keep = useMutation(
    api.team.keepVisit.mutationOptions({
      onSuccess: async (answer) => {
        if (!answer.ok) return;
        setKept(true);
        for (const key of [VISIT_KEY, KEPT_NAMES_KEY]) removeStored(KEPT_FORMS + key);
        await queryClient.invalidateQueries(api.team.mine.queryFilter());
        router.replace(eventAddress(answer.teamId, answer.eventId));
      },
    }),
  );
  const problems = keep.data?.ok === false ? keep.data.problems : [];
  return (
    <div className={styles.page}>
      <PageHeader title="Keep what you worked out" />
      <p>A team, your car with a first set of cards, and the event with its itinerary are made in one go.</p>
      <KeepVisitNames
        names={names}
        busy={keep.isPending || kept}
        error={keep.error}
        onKeep={(typed) => keep.mutate(keepVisitInput.parse({ ...typed, visit }))}
      />
      {problems.length > 0 ? (
        <>
          <ItineraryProblems problems={problems} />
          <p>
            <PageLink href="/try/">Back to the itinerary, to mend it</PageLink>
          </p>
        </>
      ) : null}
    </div>
  );
}
