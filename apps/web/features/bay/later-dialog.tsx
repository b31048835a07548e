import { Dialog } from '@/components/dialog';
import { ErrorState } from '@/components/error-state';
import { LoadingState } from '@/components/loading-state';
import { later } from '@/lib/later';
import { useLater } from '@/lib/use-later';
import { ACTION_SHAPES } from '../work/check-args';
import type { BayDialogProps } from './bay-dialog';
import type { OpenDialog } from './open-dialog';

/** What is typed in them is looked at before it is kept, so the shapes come along. */
const DIALOGS = later(async () => {
  const [dialogs] = await Promise.all([import('./bay-dialog'), ACTION_SHAPES.fetch()]);
  return dialogs;
});

/** The dialogs of the bay: fetched behind the list of jobs, which is what people come for. */
export function LaterDialog(props: BayDialogProps & { dialog: OpenDialog }) {
  const { part, failed, retry } = useLater(DIALOGS);
  if (part) return <part.BayDialog {...props} />;
  return (
    <Dialog open onClose={props.onClose} title={failed ? 'Not here yet' : 'One moment'}>
      {failed ? (
        <ErrorState
          sentence="This form has not reached the phone yet. Try again when you have a connection."
          onTryAgain={retry}
        />
      ) : (
        <LoadingState words="Fetching the form …" />
      )}
    </Dialog>
  );
}
