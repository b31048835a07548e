import type { Metadata } from 'next';
import { Join } from '@/features/account/join';
import { PageFrame } from '@/features/frame/page-frame';

export const metadata: Metadata = { title: 'Join a team' };

export default function JoinPage() {
  return (
    <PageFrame>
      <Join />
    </PageFrame>
  );
}
