'use client';

import { roadAddress } from '../events/addresses';
import { VisitPage } from '../service/visit-page';
import { RoadScreen } from './road-screen';

export function RoadPage() {
  return (
    <VisitPage addressOf={roadAddress}>
      {(work, visit) => (
        <RoadScreen key={`${visit.entry.entryId}${visit.service.id}`} work={work} visit={visit} />
      )}
    </VisitPage>
  );
}
