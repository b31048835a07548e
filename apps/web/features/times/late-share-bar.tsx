import { RangeBar } from '@/components/range-bar';
import { type LateShare, lateShareInWords } from './lateness-words';

/** Which share was late, drawn from none to all with how sure it is. */
export function LateShareBar(props: LateShare) {
  const { share } = props.late;
  if (share === null) return lateShareInWords(props);
  const { low, high } = share.bounds;
  return (
    <RangeBar value={share.share} low={low} high={high} top={1}>
      {lateShareInWords(props)}
    </RangeBar>
  );
}
