'use client';

import { useQuery } from '@tanstack/react-query';
import { api } from '@/lib/api';
import { ListOfNow, ListPage, type OwnEvent } from '../organiser/list-page';
import { RetirementsScreen } from './retirements-screen';

/** Who started one event, who stopped, and why. */
export function RetirementsPage() {
  return <ListPage>{(own) => <Loaded own={own} />}</ListPage>;
}

function Loaded({ own }: { own: OwnEvent }) {
  const found = useQuery(api.retirement.get.queryOptions(own));
  return <ListOfNow found={found}>{(event) => <RetirementsScreen own={own} event={event} />}</ListOfNow>;
}
