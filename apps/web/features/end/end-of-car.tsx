import type { EntryReplica } from '@halfshaft/contract';
import { type WorkshopAccess, workshopList } from '@halfshaft/lifing';
import { photosOfCar } from '@halfshaft/worklog';
import { useMemo } from 'react';
import { Sheet } from '@/components/sheet';
import { TextArea } from '@/components/text-area';
import * as z from '@/lib/zod';
import { useDraft } from '../bay/use-draft';
import { PhotoStrip } from '../photos/photo-strip';
import { clockBeside } from '../service/time-in-words';
import { carNameOf, nameOf, serviceNameOf } from '../work/names';
import { placeInWords } from '../work/place-in-words';
import type { LoadedWork } from '../work/work-page';
import styles from './end.module.css';
import { endOfEvent, type FoundItem, type OpenItem, partsNeeded, workshopItems } from './open-items';
import { TakeAlong } from './take-along';

const MILLIS = 1000;

/** What one car takes home from the event. */
export function EndOfCar({ work, entry }: { work: LoadedWork; entry: EntryReplica }) {
  const { replica, state, entries } = work;
  const end = useMemo(() => endOfEvent(state, entries, entry), [state, entries, entry]);
  const items = workshopItems(end);
  const photos = photosOfCar(state, entry.entryId);
  const name = `${carNameOf(replica, entry.entryId)}: `;
  const whenOf = ({ at, by, serviceId }: FoundItem) => {
    const seconds = Math.floor(at / MILLIS) + replica.clockOffsetSeconds;
    const clock = clockBeside(seconds, 0, replica.itinerary);
    return `${nameOf(replica, by)}, ${serviceNameOf(replica, serviceId)}, ${clock}`;
  };
  return (
    <>
      <Sheet title={`${name}what was found`}>
        <ItemList
          empty="Nothing out of order was noted."
          lines={end.found.map((item) => `${item.title}. ${item.words} (${whenOf(item)})`)}
        />
      </Sheet>
      {photos.length > 0 ? (
        <Sheet title={`${name}photos`}>
          <PhotoStrip work={work} photos={photos} />
        </Sheet>
      ) : null}
      <Sheet title={`${name}temporary repairs`}>
        <p>Each stands until the workshop has made it good.</p>
        <ItemList
          empty="No temporary repair was noted."
          lines={end.temporary.map((item) => `${item.title}. ${item.words} (${whenOf(item)})`)}
        />
      </Sheet>
      <Sheet title={`${name}left and carried over`}>
        <ItemList
          empty="Nothing was left."
          lines={[...end.carriedOver, ...end.snags].map((item) => lineOf(item, placeInWords(item.place)))}
        />
      </Sheet>
      <Sheet title={`${name}workshop list`}>
        <Workshop items={items} />
        <p>Whether the car may run again, the event's regulations and qualified people decide.</p>
      </Sheet>
      <ToOrder name={name} entryId={entry.entryId} needed={partsNeeded(end)} />
      <TakeAlong work={work} entry={entry} items={items} />
    </>
  );
}

function lineOf({ title, words }: OpenItem, place: string): string {
  return [title, place, words].filter((part) => part !== '').join(' · ');
}

function ItemList({ lines, empty }: { lines: readonly string[]; empty: string }) {
  if (lines.length === 0) return <p>{empty}</p>;
  return (
    <ul className={styles.list}>
      {lines.map((line, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the same may have been noted twice, and the order is the log's
        <li key={index}>{line}</li>
      ))}
    </ul>
  );
}

const ACCESS_NAMES: Record<WorkshopAccess, string> = {
  wheelsOff: 'Car up, wheels off',
  underneath: 'Car up, from underneath',
  engineBay: 'Bonnet open',
  cockpit: 'Inside',
  boot: 'Boot open',
  body: 'Outside',
  anywhere: 'Whole car, and anywhere else',
};

/** By access: what must be opened is opened once, and all that is behind it is done meanwhile. */
function Workshop({ items }: { items: readonly OpenItem[] }) {
  const groups = workshopList(items);
  if (groups.length === 0) return <p>Nothing waits for the workshop.</p>;
  return groups.map(({ access, jobs }) => (
    <div key={access}>
      <h3>{ACCESS_NAMES[access]}</h3>
      <ItemList empty="" lines={jobs.map((item) => lineOf(item, placeInWords(item.place)))} />
    </div>
  ));
}

interface ToOrderProps {
  name: string;
  entryId: string;
  needed: readonly FoundItem[];
}

function ToOrder({ name, entryId, needed }: ToOrderProps) {
  const [words, setWords] = useDraft(`toOrder.${entryId}`, z.string(), '');
  return (
    <Sheet title={`${name}to order`}>
      <ItemList
        empty="Nothing was marked as needing work, and no temporary repair stands."
        lines={needed.map((item) => `For: ${item.title}. ${item.words}`)}
      />
      <div className="screen-only">
        <TextArea
          label="Parts and sizes"
          hint="Kept on this device, and printed with the page."
          optional
          value={words}
          onChange={({ target }) => setWords(target.value)}
        />
      </div>
      <p className={`print-only ${styles.written}`}>{words}</p>
    </Sheet>
  );
}
