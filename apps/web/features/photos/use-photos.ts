import { useEffect, useState, useSyncExternalStore } from 'react';
import type { KeptPhoto } from './kept-photo';
import type { PhotoQueue } from './photo-queue';

const NONE: readonly KeptPhoto[] = [];

/** The pictures of this event that are on this phone and not sent, the oldest first. */
export function usePhotos(queue: PhotoQueue): readonly KeptPhoto[] {
  return useSyncExternalStore(queue.subscribe, queue.getPhotos, () => NONE);
}

/** An address under which a picture of this phone can be shown; null until there is one. */
export function useFileAddress(file: Uint8Array<ArrayBuffer> | undefined): string | null {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    if (!file) return;
    const made = URL.createObjectURL(new Blob([file], { type: 'image/jpeg' }));
    setAddress(made);
    return () => {
      URL.revokeObjectURL(made);
      setAddress(null);
    };
  }, [file]);
  return address;
}
