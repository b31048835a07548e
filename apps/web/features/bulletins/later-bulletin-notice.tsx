import { later } from '@/lib/later';
import { useLater } from '@/lib/use-later';

const NOTICE = later(() => import('./bulletin-notice'));

/** `BulletinNotice` on a page whose own work comes first: it waits for an answer of the server anyway. */
export function LaterBulletinNotice(props: { teamId: string; eventId: string }) {
  const { part } = useLater(NOTICE);
  return part && <part.BulletinNotice {...props} />;
}
