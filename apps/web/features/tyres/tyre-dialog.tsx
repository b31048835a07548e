import type { CarFact, FactPlace, PersonId, TyreId, TyrePlace, TyreUse } from '@halfshaft/worklog';
import type { Visit } from '../service/visit';
import { newId } from '../work/new-id';
import type { LoadedWork } from '../work/work-page';
import { AddTyreDialog } from './add-tyre-dialog';
import { MeasureDialog } from './measure-dialog';
import { PlaceDialog } from './place-dialog';

export type TyreDialogKind =
  | { kind: 'place'; place: TyrePlace }
  | { kind: 'add'; place: TyrePlace }
  | { kind: 'measure'; tyreId: TyreId };

export interface TyreDialogProps {
  work: LoadedWork;
  visit: Visit;
  tyres: readonly TyreUse[];
  onOpen: (dialog: TyreDialogKind) => void;
  onClose: () => void;
}

export interface TyreFormProps extends TyreDialogProps {
  record: (facts: readonly CarFact[], at: FactPlace) => void;
}

/** Whichever of the tyre sheet's dialogs is asked for. */
export function TyreDialog({
  dialog,
  by,
  ...props
}: TyreDialogProps & { dialog: TyreDialogKind; by: PersonId }) {
  const { work, visit, tyres } = props;
  const record = (facts: readonly CarFact[], at: FactPlace) => {
    for (const fact of facts)
      work.act('recordFact', { factId: newId(), entryId: visit.entry.entryId, at, fact }, by);
  };
  if (dialog.kind === 'place') return <PlaceDialog {...props} record={record} place={dialog.place} />;
  if (dialog.kind === 'add') return <AddTyreDialog {...props} record={record} startPlace={dialog.place} />;
  const tyre = tyres.find(({ tyreId }) => tyreId === dialog.tyreId);
  return tyre ? <MeasureDialog {...props} record={record} tyre={tyre} /> : null;
}
