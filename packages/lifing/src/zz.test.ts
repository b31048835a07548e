import { it } from 'vitest';
import { EVENT, playEvent, judgedAt, crewAt } from './scripted-event/fixtures';
import { quickAnswers, slowAnswers } from './random-events/fixtures';
import { askedAt } from './scripted-event/fixtures';
it('x', () => {
  const log = playEvent();
  EVENT.services.forEach((s, i) => {
    const arr = log.filter(f => f.pointIndex < s.inIndex);
    const v = judgedAt(i, arr);
    const t = v.flatMap(x => x.reasons.filter(r => r.source==='trigger').map(r => `${x.cardId.slice(8)}${x.doableHere?'':'(x)'}${x.overdue?'!':''}: ${(r.reason as any).words}`));
    const due = v.filter(x=>x.verdict==='doNow' && !x.reasons.some(r=>r.source==='trigger')).map(x=>x.cardId.slice(8));
    (globalThis as any).console.log(s.id, s.inIndex, s.outIndex, '\n', t.join('\n '), '\n   plus', due.join(' '));
    const a = (globalThis as any).performance.now();
    const q = askedAt(i, arr); const same = JSON.stringify(quickAnswers(q))===JSON.stringify(slowAnswers(q));
    (globalThis as any).console.log(same, (globalThis as any).performance.now()-a);
  });
  EVENT.itinerary.points.forEach((p, i) => (globalThis as any).console.log(i, p.kind, p.id, p.firstCarAt/3600, crewAt(i, log).join(' ')));
});
