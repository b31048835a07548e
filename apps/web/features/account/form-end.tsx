import { Button } from '@/components/button';
import { Notice } from '@/components/notice';

interface FormEndProps {
  /** Why it did not work; null while nothing is wrong. */
  problem: string | null;
  busy: boolean;
  busyWords: string;
  /** What the button says. */
  children: string;
}

/** Below the fields of a form: why it did not work, and its button. */
export function FormEnd({ problem, busy, busyWords, children }: FormEndProps) {
  return (
    <>
      {problem ? (
        <Notice kind="problem" spoken>
          {problem}
        </Notice>
      ) : null}
      <div>
        <Button type="submit" look="main" busy={busy} busyWords={busyWords}>
          {children}
        </Button>
      </div>
    </>
  );
}
