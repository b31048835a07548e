import type { ComponentProps } from 'react';
import { classNames } from '@/lib/class-names';
import { type ButtonLook, buttonClass } from './button';
import { PageLink } from './page-link';

export interface LinkButtonProps extends ComponentProps<typeof PageLink> {
  look?: ButtonLook;
  wide?: boolean;
}

/** A link that leads on to the next step: it looks like a button and stays a link. */
export function LinkButton({ look = 'plain', wide = false, className, ...rest }: LinkButtonProps) {
  return <PageLink {...rest} className={classNames(buttonClass(look, wide), className)} />;
}
