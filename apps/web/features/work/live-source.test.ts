import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { LiveFeed, type LiveHearing } from './live-source';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function openFeed() {
  const hearings: LiveHearing[] = [];
  const close = vi.fn();
  const onSeq = vi.fn();
  const onEntries = vi.fn();
  const onChange = vi.fn();
  const open = (hearing: LiveHearing) => {
    hearings.push(hearing);
    return close;
  };
  return { feed: new LiveFeed({ open, onSeq, onEntries, onChange }), hearings, close, onSeq, onChange };
}

describe('LiveFeed', () => {
  it('passes on what it hears and does not ask while the stream is up', () => {
    const { feed, hearings, onSeq, onChange } = openFeed();
    feed.start();
    hearings[0]?.opened();
    hearings[0]?.seq(41);
    vi.advanceTimersByTime(100_000);
    expect(onSeq.mock.calls).toEqual([[41]]);
    expect(onChange.mock.calls).toEqual([[true]]);
  });

  it('opens again after growing pauses', () => {
    const { feed, hearings } = openFeed();
    feed.start();
    for (const pause of [1_000, 2_000, 4_000]) {
      const before = hearings.length;
      hearings.at(-1)?.lost();
      vi.advanceTimersByTime(pause - 1);
      expect(hearings).toHaveLength(before);
      vi.advanceTimersByTime(1);
      expect(hearings).toHaveLength(before + 1);
    }
  });

  it('asks every 20 s while it is down', () => {
    const { feed, hearings, onSeq } = openFeed();
    feed.start();
    hearings[0]?.opened();
    hearings[0]?.lost();
    vi.advanceTimersByTime(40_000);
    expect(onSeq.mock.calls).toEqual([[0], [0]]);
  });

  it('does nothing any more once stopped', () => {
    const { feed, hearings, close, onSeq } = openFeed();
    feed.start();
    feed.stop();
    vi.advanceTimersByTime(100_000);
    expect(close).toHaveBeenCalledTimes(1);
    expect(hearings).toHaveLength(1);
    expect(onSeq).not.toHaveBeenCalled();
  });
});
