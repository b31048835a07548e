import Link from 'next/link';
import type { ComponentProps } from 'react';
import { classNames } from '@/lib/class-names';
import { type ButtonLook, buttonClass } from './button';

export interface LinkButtonProps extends ComponentProps<typeof Link> {
  look?: ButtonLook;
  wide?: boolean;
}

/** A link that leads on to the next step: it looks like a button and stays a link. */
export function LinkButton({ look = 'plain', wide = false, className, ...rest }: LinkButtonProps) {
  return <Link {...rest} className={classNames(buttonClass(look, wide), className)} />;
}
