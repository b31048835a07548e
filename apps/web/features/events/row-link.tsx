import type { ReactNode } from 'react';
import { PageLink } from '@/components/page-link';
import styles from './row-link.module.css';

/** The name of a table's row as a link large enough for a thumb. */
export function RowLink({ href, children }: { href: string; children: ReactNode }) {
  return (
    <PageLink className={styles.link} href={href}>
      {children}
    </PageLink>
  );
}
