import { Notice } from '@/components/notice';
import { PageLink } from '@/components/page-link';
import type { Account } from '@/lib/session';
import { HOME_ADDRESS } from '../events/addresses';

export function SignedInAlready({ account, next }: { account: Account; next: string }) {
  if (account.isHelper) {
    return (
      <Notice kind="warning" title="You came by a link">
        <p>
          Another sign-in on this device ends what the link let you into: afterwards you need a new link from
          your team. <PageLink href={HOME_ADDRESS}>Stay as you are</PageLink>.
        </p>
      </Notice>
    );
  }
  return (
    <Notice title={`Signed in as ${account.name}`}>
      <p>
        <PageLink href={next}>Go on</PageLink>, or sign in below as someone else.
      </p>
    </Notice>
  );
}
