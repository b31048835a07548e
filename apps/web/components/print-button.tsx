'use client';

import { type ReactNode, useEffect } from 'react';
import { Button } from './button';

interface PrintButtonProps {
  /** What stands at the foot of every page, so that a second page that got loose says where it belongs. */
  foot: string;
  look?: 'main';
  children: ReactNode;
}

/** Prints the page; the foot is there also when the browser's own menu prints it. */
export function PrintButton({ foot, look, children }: PrintButtonProps) {
  useEffect(() => {
    const { style } = document.documentElement;
    // A JSON string is a CSS string too, but for line breaks, which no title has.
    style.setProperty('--page-foot', JSON.stringify(foot));
    return () => void style.removeProperty('--page-foot');
  }, [foot]);
  return (
    <Button {...(look ? { look } : {})} onClick={() => window.print()}>
      {children}
    </Button>
  );
}
