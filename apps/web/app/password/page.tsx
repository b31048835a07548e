import type { Metadata } from 'next';
import { NewPassword } from '@/features/account/new-password';
import { PageFrame } from '@/features/frame/page-frame';

export const metadata: Metadata = { title: 'New password' };

export default function PasswordPage() {
  return (
    <PageFrame>
      <NewPassword />
    </PageFrame>
  );
}
