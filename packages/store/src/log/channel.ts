/** Every process listens on this one channel; a notice carries team, event and seq, never content. */
export const LOG_CHANNEL = 'halfshaft_log';

export interface LogNotice {
  team: string;
  event: string;
  seq: number;
}
