import type { OpenBulletin } from '@halfshaft/contract';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Button } from '@/components/button';
import { Sheet } from '@/components/sheet';
import { api, problemOf } from '@/lib/api';
import { SaveTrouble } from '../events/trouble';
import { useTeam } from '../events/use-team';
import type { LoadedWork } from '../work/work-page';
import type { Accepted } from './accepted-bulletin';
import { whoAccepts } from './bulletin-words';

export interface AcceptBulletinProps {
  work: LoadedWork;
  bulletin: OpenBulletin;
  onAccepted: (accepted: Accepted) => void;
}

/** The button for managers; the others are told whom to ask. */
export function AcceptBulletin({ work, bulletin, onAccepted }: AcceptBulletinProps) {
  const { teamId, eventId, replica } = work;
  const { number } = bulletin;
  const team = useTeam(teamId);
  const queries = useQueryClient();
  const open = api.bulletin.open.queryKey({ teamId, eventId });
  const accept = useMutation(
    api.bulletin.accept.mutationOptions({
      onSuccess: async ({ itineraryNumber }) => {
        queries.setQueryData(open, null);
        onAccepted({ bulletinNumber: number, itineraryNumber });
        // The bay and the services hold a copy of their own.
        work.retry();
        await Promise.all([
          queries.invalidateQueries({ queryKey: api.event.get.queryKey({ teamId, eventId }) }),
          queries.invalidateQueries({ queryKey: api.event.list.queryKey({ teamId }) }),
        ]);
      },
      // A newer one may have come, which is then the one to read.
      onError: () => queries.invalidateQueries({ queryKey: open }),
    }),
  );
  return (
    <Sheet title="Go by it">
      <p>
        The organiser's itinerary becomes the next version of yours. What was done, found and written down
        stays as it is.
      </p>
      {team?.mayManage ? (
        <div>
          <Button
            look="main"
            busy={accept.isPending}
            busyWords="Accepting …"
            onClick={() => accept.mutate({ teamId, eventId, number })}
          >
            Accept bulletin {number}
          </Button>
        </div>
      ) : (
        <p>{whoAccepts(replica.people)}</p>
      )}
      <SaveTrouble problem={accept.error ? problemOf(accept.error) : null} />
    </Sheet>
  );
}
