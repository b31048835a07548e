'use client';

import { useQuery } from '@tanstack/react-query';
import { api } from '@/lib/api';
import { ListOfNow, ListPage, type OwnEvent } from '../organiser/list-page';
import { TimesScreen } from './times-screen';

/** When the cars of one event came to its controls. */
export function TimesPage() {
  return <ListPage>{(own) => <Loaded own={own} />}</ListPage>;
}

function Loaded({ own }: { own: OwnEvent }) {
  const found = useQuery(api.timeList.get.queryOptions(own));
  return <ListOfNow found={found}>{(event) => <TimesScreen own={own} event={event} />}</ListOfNow>;
}
