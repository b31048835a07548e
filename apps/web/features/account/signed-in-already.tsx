import Link from 'next/link';
import { Notice } from '@/components/notice';
import type { Account } from '@/lib/session';

export function SignedInAlready({ account, next }: { account: Account; next: string }) {
  return (
    <Notice title={`Signed in as ${account.isHelper ? 'a helper' : account.name}`}>
      <p>
        <Link href={next}>Go on</Link>, or sign in below as someone else.
      </p>
    </Notice>
  );
}
