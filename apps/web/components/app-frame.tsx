'use client';

import { usePathname } from 'next/navigation';
import type { ReactNode } from 'react';
import { classNames } from '@/lib/class-names';
import styles from './app-frame.module.css';
import { PageLink } from './page-link';

export interface FrameLink {
  /** With its query string; a page is the current one when its path matches. */
  href: string;
  /** One or two words. */
  label: string;
  /** A small drawing above the word on phones. */
  drawing?: ReactNode;
}

export interface AppFrameProps {
  productName: string;
  productMark?: ReactNode;
  homeHref?: string;
  /** Where one is, in the top bar: "Car 14, Service B". */
  where?: ReactNode;
  /** Up to five: they stand in the top bar, and as a bottom row on phones. */
  links?: readonly FrameLink[];
  /** At the right of the top bar: a clock, the person. */
  aside?: ReactNode;
  /** Below the top bar, over the whole width: the offline bar. */
  status?: ReactNode;
  footer?: ReactNode;
  /** Uses the whole width, for a screen on a wall. */
  wide?: boolean;
  children: ReactNode;
}

/** The board everything is clipped to: a dark top bar, the page, a foot. */
export function AppFrame(props: AppFrameProps) {
  const {
    productName,
    productMark,
    homeHref = '/',
    where,
    links = [],
    aside,
    status,
    footer,
    wide = false,
    children,
  } = props;
  return (
    <div className={classNames(styles.frame, links.length > 0 && styles.withLinks, wide && styles.wide)}>
      <header className={styles.bar}>
        <div className={styles.inside}>
          <PageLink className={styles.home} href={homeHref}>
            {productMark}
            <span className={styles.name}>{productName}</span>
          </PageLink>
          {where ? <p className={styles.where}>{where}</p> : null}
          {links.length > 0 ? <FrameLinks links={links} /> : null}
          {aside ? <div className={styles.aside}>{aside}</div> : null}
        </div>
      </header>
      {status}
      <main className={styles.main} id="content" tabIndex={-1}>
        {children}
      </main>
      {footer ? (
        <footer className={styles.footer}>
          <div className={styles.foot}>{footer}</div>
        </footer>
      ) : null}
    </div>
  );
}

function FrameLinks({ links }: { links: readonly FrameLink[] }) {
  const pathname = usePathname();
  return (
    <nav className={styles.links} aria-label="Main">
      {links.map((link) => (
        <PageLink
          key={link.href}
          className={styles.link}
          href={link.href}
          aria-current={isSamePath(link.href, pathname) ? 'page' : undefined}
        >
          {link.drawing}
          {link.label}
        </PageLink>
      ))}
    </nav>
  );
}

function isSamePath(href: string, pathname: string): boolean {
  const path = href.split(/[?#]/)[0] ?? '';
  return path.replace(/\/$/, '') === pathname.replace(/\/$/, '');
}
