import type { DraftFile } from './draft-photo-box';
import { PhotoButton } from './photo-button';
import styles from './photos.module.css';
import { useFileAddress } from './use-photos';

interface DraftPhotosProps {
  of: string;
  files: readonly DraftFile[];
  onChange: (files: readonly DraftFile[]) => void;
}

/** Photos of something that is still being written down; they go into the log with it. A tap takes one away again. */
export function DraftPhotos({ of, files, onChange }: DraftPhotosProps) {
  return (
    <div className={styles.drafts}>
      <PhotoButton
        of={of}
        onTake={async (file) => {
          onChange([...files, file]);
          return null;
        }}
      />
      {files.map((file, index) => (
        <DraftPhoto
          // biome-ignore lint/suspicious/noArrayIndexKey: files have no id yet
          key={index}
          file={file}
          name={`Remove photo ${index + 1}`}
          onRemove={() => onChange(files.filter((each) => each !== file))}
        />
      ))}
    </div>
  );
}

function DraftPhoto({ file, name, onRemove }: { file: DraftFile; name: string; onRemove: () => void }) {
  const address = useFileAddress(file);
  return (
    <button type="button" className={styles.small} aria-label={name} onClick={onRemove}>
      {/* biome-ignore lint/performance/noImgElement: it is on this phone */}
      {address ? <img src={address} alt="" /> : null}
      <span className={styles.waits}>Remove</span>
    </button>
  );
}
