import { useEffect, useState } from 'react';
import { type DraftFile, keepDraftPhotos, readDraftPhotos } from './draft-photo-box';

/**
 * The pictures of something half filled in, kept on this phone like its words, so that a page that dies loses none. The
 * last function forgets them, once each is kept for sending.
 */
export function useDraftPhotos(
  key: string,
): [readonly DraftFile[], (files: readonly DraftFile[]) => void, () => void] {
  const [files, setFiles] = useState<readonly DraftFile[]>([]);
  const [isRead, setRead] = useState(false);
  useEffect(() => {
    let isGone = false;
    void readDraftPhotos(key)
      .catch(() => [])
      .then((kept) => {
        if (isGone) return;
        // Before what was taken while the phone still looked.
        setFiles((taken) => [...kept, ...taken]);
        setRead(true);
      });
    return () => {
      isGone = true;
    };
  }, [key]);
  useEffect(() => {
    // Where there is no room they live as long as the page.
    if (isRead) void keepDraftPhotos(key, files).catch(() => undefined);
  }, [key, files, isRead]);
  return [files, setFiles, () => void keepDraftPhotos(key, []).catch(() => undefined)];
}
