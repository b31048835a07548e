import type { Metadata } from 'next';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { PageFrame } from '@/features/frame/page-frame';

export const metadata: Metadata = { title: 'Not found' };

export default function NotFound() {
  return (
    <PageFrame>
      <EmptyState
        title="There is no page at this address."
        action={
          <LinkButton href="/" look="main">
            Back to the start
          </LinkButton>
        }
      >
        The address may be mistyped, or the page has moved.
      </EmptyState>
    </PageFrame>
  );
}
