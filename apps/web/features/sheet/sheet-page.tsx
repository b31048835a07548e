'use client';

import { sheetAddress } from '../events/addresses';
import { VisitPage } from '../service/visit-page';
import { SheetScreen } from './sheet-screen';

export function SheetPage() {
  return (
    <VisitPage addressOf={sheetAddress}>
      {(work, visit) => (
        <SheetScreen key={`${visit.entry.entryId}${visit.service.id}`} work={work} visit={visit} />
      )}
    </VisitPage>
  );
}
