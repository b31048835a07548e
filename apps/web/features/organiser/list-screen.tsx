import { csvText } from '@halfshaft/lifing';
import type { ReactNode } from 'react';
import { Button } from '@/components/button';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { PrintButton } from '@/components/print-button';
import { Sheet } from '@/components/sheet';
import { dayInWords } from '@/lib/day-in-words';
import { saveTable } from '@/lib/save-file';
import { savedInWords } from '../bulletins/bulletin-words';
import type { OwnEvent } from './list-page';
import { organiserEventAddress } from './organiser-addresses';

export interface ListScreenProps {
  title: string;
  own: OwnEvent;
  event: { name: string; startsOn: string; timeZone: string };
  /** Stand beside the day below the title. */
  facts?: readonly string[];
  saved: { savedAt: number; savedByYou: boolean } | null;
  /** What such a list is for, said until there is one. */
  purpose: string;
  listTitle: string;
  /** The saved list as a table; null while there is none. */
  download: { words: string; name: string; cells: () => string[][] } | null;
  /** The box of the list, with its help. */
  form: ReactNode;
  /** What the list tells: on paper nothing else is shown. */
  children: ReactNode;
}

/** A list that an organiser keeps of one event, and below it what it tells. */
export function ListScreen(props: ListScreenProps) {
  const { title, own, event, facts = [], saved, purpose, listTitle, download, form, children } = props;
  const { name, startsOn, timeZone } = event;
  return (
    <>
      <PageHeader
        title={title}
        above={name}
        facts={[dayInWords(startsOn), ...facts]}
        actions={
          <>
            {download ? (
              <>
                <PrintButton foot={`${title}, ${name}`}>Print</PrintButton>
                <Button onClick={() => saveTable(`${name} ${download.name}`, csvText(download.cells()))}>
                  {download.words}
                </Button>
              </>
            ) : null}
            <LinkButton href={organiserEventAddress(own.organiserId, own.publishedEventId)}>
              Back to the event
            </LinkButton>
          </>
        }
      />
      <div className="screen-only">
        <Sheet title={listTitle}>
          <p>
            {saved
              ? `${savedInWords(saved.savedAt, timeZone)}, by ${saved.savedByYou ? 'you' : 'another person of the organiser'}. Saving puts the whole list in place of it. No team sees it.`
              : `Nothing is saved for this event yet. ${purpose} No team sees it.`}
          </p>
          {form}
        </Sheet>
      </div>
      {children}
    </>
  );
}
