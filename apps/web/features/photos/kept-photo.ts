import type { FactId, PersonId } from '@halfshaft/worklog';
import type { Place } from '../work/waiting-action';

/** A picture that is on this phone and not yet on the server. */
export interface KeptPhoto {
  photoId: FactId;
  place: Place;
  /** Who took it: it is sent under this person's sign-in and nobody else's. */
  owner: PersonId;
  ownerName: string;
  /** This phone's clock, in milliseconds. */
  takenAt: number;
  file: Uint8Array<ArrayBuffer>;
  /** Why the server did not take it: it is sent again only when its person says so. Null while it waits. */
  refused: string | null;
}

/** Keeps pictures beyond the page, for all tabs of this phone. Each call is one transaction. */
export interface PhotoBox {
  read(place: Place): Promise<KeptPhoto[]>;
  /** Of the whole phone, without the pictures themselves. */
  listOwners(): Promise<{ place: Place; ownerName: string }[]>;
  keep(photo: KeptPhoto): Promise<void>;
  drop(photo: Pick<KeptPhoto, 'photoId' | 'place'>): Promise<void>;
  /** Throws away all of everybody. */
  clear(): Promise<void>;
  /** What was changed, by this tab or another. The returned function stops hearing. */
  hear(listener: () => void): () => void;
}
