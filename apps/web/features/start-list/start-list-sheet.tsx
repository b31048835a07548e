'use client';

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { LoadingState } from '@/components/loading-state';
import { SelectField } from '@/components/select-field';
import { Sheet } from '@/components/sheet';
import { api } from '@/lib/api';
import { LoadTrouble } from '../events/trouble';
import { StartListForm } from './start-list-form';

const FIRST_SECTION = 1;

export interface StartListSheetProps {
  organiserId: string;
  publishedEventId: string;
  isPublished: boolean;
}

/** The organiser's start lists: one for each section in which the order is set anew. */
export function StartListSheet({ organiserId, publishedEventId, isPublished }: StartListSheetProps) {
  const own = { organiserId, publishedEventId };
  const found = useQuery(api.startList.list.queryOptions(own));
  const [section, setSection] = useState(FIRST_SECTION);
  if (found.isPending) return <LoadingState words="Fetching the start lists …" />;
  if (found.data === undefined) {
    return <LoadTrouble error={found.error} onTryAgain={() => found.refetch()} />;
  }
  const { sections, lists } = found.data;
  const choices = sections.map((one) => {
    const cars = lists.find((list) => list.section === one)?.cars;
    const standing = cars === undefined ? 'no list yet' : cars === 1 ? '1 car' : `${cars} cars`;
    return { value: String(one), label: `Section ${one}: ${standing}` };
  });
  return (
    <Sheet title="Start list">
      <p>
        {isPublished
          ? 'Each team sees where its cars start as soon as the list is saved.'
          : 'Teams see where their cars start once the event is published.'}
      </p>
      {sections.length > 1 ? (
        <SelectField
          label="Order from"
          hint="Where no list is given, the order of the section before goes on."
          value={String(section)}
          onChange={({ target }) => setSection(Number(target.value))}
          options={choices}
        />
      ) : null}
      <StartListForm
        // A box of its own for each section.
        key={section}
        own={own}
        section={section}
        saved={lists.find((list) => list.section === section)?.source ?? ''}
      />
    </Sheet>
  );
}
