'use client';

import { recordSheetAddress } from '../events/addresses';
import { VisitPage } from '../service/visit-page';
import { RecordScreen } from './record-screen';

export function RecordPage() {
  return (
    <VisitPage addressOf={recordSheetAddress}>
      {(work, visit) => (
        <RecordScreen key={`${visit.entry.entryId}${visit.service.id}`} work={work} visit={visit} />
      )}
    </VisitPage>
  );
}
