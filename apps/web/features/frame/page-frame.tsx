import type { ReactNode } from 'react';
import { AppFrame, type FrameLink } from '@/components/app-frame';
import { OfflineBar, type OfflineBarProps } from '@/components/offline-bar';
import { ThemeChoice } from '../theme/theme-choice';
import { KeepPages } from './keep-pages';
import styles from './page-frame.module.css';
import { ProductMark } from './product-mark';

export interface PageFrameProps {
  where?: ReactNode;
  links?: readonly FrameLink[];
  aside?: ReactNode;
  /** What is known of the connection and of entries that wait. */
  connection?: OfflineBarProps;
  homeHref?: string;
  wide?: boolean;
  children: ReactNode;
}

/** Halfshaft's frame around every page. */
export function PageFrame({ connection, children, ...frame }: PageFrameProps) {
  return (
    <AppFrame
      productName="Halfshaft"
      productMark={<ProductMark />}
      status={
        <>
          <OfflineBar {...connection} />
          <KeepPages />
        </>
      }
      footer={
        <div className={styles.foot}>
          <p className={styles.caution}>
            Halfshaft never says that a car is safe. The event's regulations, local rules and qualified people
            decide.
          </p>
          <ThemeChoice />
        </div>
      }
      {...frame}
    >
      {children}
    </AppFrame>
  );
}
