import type { ReactNode } from 'react';
import { classNames } from '@/lib/class-names';
import styles from './stack.module.css';

export interface StackProps {
  children: ReactNode;
  gap?: 'small' | 'normal' | 'large';
  /** In a row that wraps, for buttons. */
  across?: boolean;
}

/** Things below each other with even gaps. */
export function Stack({ children, gap = 'normal', across = false }: StackProps) {
  return <div className={classNames(styles.stack, styles[gap], across && styles.across)}>{children}</div>;
}
