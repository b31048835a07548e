import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { Stack } from '@/components/stack';

export interface RestoredNoticeProps {
  /** From `useKeptForm`. */
  restored: boolean;
  onStartAfresh: () => void;
}

/** Says that the form holds what was typed earlier, and lets it go. */
export function RestoredNotice({ restored, onStartAfresh }: RestoredNoticeProps) {
  if (!restored) return null;
  return (
    <Notice title="What you typed earlier is back">
      <Stack gap="small">
        <p>It was not saved yet.</p>
        <Button look="quiet" onClick={onStartAfresh}>
          Start afresh
        </Button>
      </Stack>
    </Notice>
  );
}
