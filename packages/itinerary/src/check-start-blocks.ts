import type { Draft, DraftProblem } from './draft';
import { MAX_START_INTERVAL_SECONDS } from './limits';

/** Start blocks: of a section that exists, from position 1 upwards, at an interval cars can start at. */
export function checkStartBlocks(draft: Draft): DraftProblem[] {
  const problems: DraftProblem[] = [];
  let before = { section: 0, fromPosition: 0 };
  for (const block of draft.startBlocks) {
    const pointIndex = draft.points.findIndex((point) => point.section === block.section);
    const place = { pointIndex: pointIndex === -1 ? null : pointIndex, key: 'interval' as const };
    const isNewSection = block.section > before.section;
    const isNext = isNewSection
      ? block.fromPosition === 1
      : block.section === before.section && block.fromPosition > before.fromPosition;
    if (pointIndex === -1 || !isNext || !Number.isSafeInteger(block.fromPosition)) {
      problems.push({
        ...place,
        code: 'interval-malformed',
        message: `The start intervals of section ${block.section} are out of order at position ${block.fromPosition}. Begin each section at position 1 and go upwards.`,
      });
    }
    const interval = block.intervalSeconds;
    if (!Number.isSafeInteger(interval) || interval < 1 || interval > MAX_START_INTERVAL_SECONDS) {
      problems.push({
        ...place,
        code: 'interval-absurd',
        message: `Cars of section ${block.section} would start ${interval} seconds apart. Write an interval from 1 s to 60 min.`,
      });
    }
    before = block;
  }
  return problems;
}
