import { type EventReplica, pushedAction } from '@halfshaft/contract';
import type { PushedAction } from '@halfshaft/worklog';
import { type PhoneDatabase, storeTogether } from '@/lib/phone-database';
import { listStored, readStored, removeStored, writeStored } from '@/lib/storage';
import type { KnownDevice } from './outbox-box';
import type { Place, WaitingAction, WorkNotice } from './waiting-action';

const OLD_DEVICE = 'work.device';
const OLD_PLACE = /^work\.(.+)\.(outbox|notices|turn)$/;

/**
 * Brings what an app before this one left in the browser's small storage into the database. All of it in one transaction,
 * and only then is the old place emptied: cut short, it is done again. A tab that still runs the app before may put
 * something back; it is brought over at the next look, and one it knows to be answered it lets go of.
 */
export async function moveOldOutbox(database: PhoneDatabase): Promise<void> {
  const places = [...new Set(listStored('work.').flatMap((key) => OLD_PLACE.exec(key)?.[1] ?? []))];
  const device = readStored(OLD_DEVICE);
  const old = places.map((place) => ({ place, ...readPlace(place) }));
  const isEmpty = old.every(({ actions, notices }) => actions.length + notices.length === 0);
  if (isEmpty && !isDevice(device)) return;

  const change = database.transaction(['outbox', 'notices', 'marks', 'replicas'], 'readwrite', {
    durability: 'strict',
  });
  const puts: (() => Promise<unknown>)[] = [];
  for (const { place, actions, notices } of old) {
    const replica = (await change.objectStore('replicas').get(place))?.replica as EventReplica | undefined;
    for (const action of actions) {
      puts.push(() => change.objectStore('outbox').put(waitingOf(action, place, replica), action.actionId));
    }
    for (const each of notices) {
      const notice: WorkNotice = {
        ...each,
        id: each.action.actionId,
        place,
        owner: ownerOf(each.action, replica),
      };
      puts.push(() => change.objectStore('notices').put(notice, notice.id));
    }
  }
  if (isDevice(device)) {
    const marks = change.objectStore('marks');
    const known = (await marks.get('device')) as KnownDevice | undefined;
    const lastSeq = Math.max(known?.lastSeq ?? 0, device.lastSeq);
    puts.push(() => marks.put({ deviceId: known?.deviceId ?? device.deviceId, lastSeq }, 'device'));
  }
  await storeTogether(change, puts);
  for (const { place, actions } of old) emptyOldPlace(place, actions);
  removeStored(OLD_DEVICE);
}

/** A tab of the app before reads that these were answered, and neither shows nor sends them again. */
function emptyOldPlace(place: Place, actions: readonly PushedAction[]): void {
  for (const kind of ['notices', 'turn']) removeStored(`work.${place}.${kind}`);
  if (actions.length === 0) removeStored(`work.${place}.outbox`);
  else writeStored(`work.${place}.outbox`, { actions: [], answered: actions.map((each) => each.actionId) });
}

function waitingOf(action: PushedAction, place: Place, replica: EventReplica | undefined): WaitingAction {
  const owner = ownerOf(action, replica);
  const ownerName = replica?.people.find((person) => person.personId === owner)?.name ?? 'Someone';
  const words = `${ownerName}: an entry from before the app was updated`;
  return { action, place, eventName: replica?.name ?? 'an event', owner, ownerName, words };
}

/** The app before did not write down who was signed in: the copy of the event knows, else it is taken to be the doer. */
function ownerOf(action: PushedAction, replica: EventReplica | undefined): string {
  return replica?.me.personId ?? action.by;
}

interface OldNotice {
  action: PushedAction;
  kind: 'refused' | 'kept';
  sentence: string;
}

function readPlace(place: Place): { actions: PushedAction[]; notices: OldNotice[] } {
  const outbox = readStored(`work.${place}.outbox`) as { actions?: unknown } | null;
  const notices = readStored(`work.${place}.notices`);
  return {
    actions: Array.isArray(outbox?.actions) ? outbox.actions.filter(isAction) : [],
    notices: Array.isArray(notices) ? notices.filter(isOldNotice) : [],
  };
}

function isAction(stored: unknown): stored is PushedAction {
  return pushedAction.safeParse(stored).success;
}

function isOldNotice(stored: unknown): stored is OldNotice {
  if (typeof stored !== 'object' || stored === null) return false;
  const { action, kind, sentence } = stored as Partial<OldNotice>;
  return typeof sentence === 'string' && (kind === 'refused' || kind === 'kept') && isAction(action);
}

function isDevice(stored: unknown): stored is KnownDevice {
  if (typeof stored !== 'object' || stored === null) return false;
  const { deviceId, lastSeq } = stored as Partial<KnownDevice>;
  return typeof deviceId === 'string' && deviceId !== '' && Number.isSafeInteger(lastSeq);
}
