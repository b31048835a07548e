'use client';

import { serviceAddress } from '../events/addresses';
import { ServiceScreen } from './service-screen';
import { VisitPage } from './visit-page';

export function ServicePage() {
  return (
    <VisitPage addressOf={serviceAddress}>
      {(work, visit) => <ServiceScreen work={work} visit={visit} />}
    </VisitPage>
  );
}
