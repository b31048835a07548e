import type { Metadata } from 'next';
import { PageFrame } from '@/features/frame/page-frame';
import { VisitPlanner } from '@/features/visit/visit-planner';

export const metadata: Metadata = { title: 'Plan a service' };

export default function TryPage() {
  return (
    <PageFrame>
      <VisitPlanner />
    </PageFrame>
  );
}
