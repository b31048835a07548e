import { later } from '@/lib/later';
import { useLater } from '@/lib/use-later';
import type { OutNoticeProps } from './out-notice';

const NOTICE = later(() => import('./out-notice'));

/** `OutNotice` on a page that must be light: most cars are not out. */
export function LaterOutNotice(props: OutNoticeProps) {
  const { part } = useLater(NOTICE);
  return part && <part.OutNotice {...props} />;
}
