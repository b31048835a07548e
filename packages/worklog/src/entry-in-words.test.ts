import { describe, expect, it } from 'vitest';
import type { CarFact } from './car-fact';
import { type EntryNames, entryInWords } from './entry-in-words';
import type { ActionBody } from './model';
import { taskIdOf } from './task-id-of';
import {
  close,
  FACT,
  FINISH,
  LEAK,
  NUTS,
  openBay,
  rulesOf,
  SNAG,
  STAGE,
  START,
  TIME,
  WHEEL,
} from './testing/bay';
import { doerOf, JO, KAI, MIA, nameOf } from './testing/people';

const titles: Record<string, string> = { nuts: 'Wheel nuts', wheel: 'Wheels off' };
const names: EntryNames = {
  person: nameOf,
  task: ({ source }) => (source.kind === 'card' ? (titles[source.cardId] ?? '?') : 'oil on the hub'),
  card: (id) => titles[id] ?? '?',
  service: (id) => `Service ${id}`,
  stage: (id) => id,
  control: (id) => id,
  clock: (at) => `${Math.floor(at / 3600)}:${String(Math.floor(at / 60) % 60).padStart(2, '0')}`,
  reading: () => 'pad thickness',
};

/** The sentences of the log after Mia (or whoever is given) did these things one after another. */
function wordsOf(
  ...acts: [ActionBody, (string | ReturnType<typeof doerOf>)?, ReturnType<typeof rulesOf>?][]
) {
  const bay = openBay();
  for (const [body, doer = MIA, rules = rulesOf()] of acts) bay.act(body, doer, rules);
  return bay.log.map((entry) => entryInWords(entry, names));
}

describe('entryInWords', () => {
  it('says who, what, where, and who typed it', () => {
    expect(wordsOf([close(NUTS), doerOf(MIA, { enteredBy: JO })])).toEqual([
      "Mia closed 'Wheel nuts' at Service B; entered by Jo",
    ]);
  });

  it('has words for taking, starting and letting go', () => {
    expect(
      wordsOf(
        [{ kind: 'startTask', args: { task: NUTS } }],
        [{ kind: 'releaseTask', args: { task: NUTS } }, doerOf(JO, { mayManage: true })],
      ),
    ).toEqual([
      "Mia took 'Wheel nuts' at Service B",
      "Mia started 'Wheel nuts' at Service B",
      "Jo let go of 'Wheel nuts' at Service B for Mia",
    ]);
  });

  it('gives the reason for leaving and opening again', () => {
    expect(
      wordsOf(
        [{ kind: 'carryOverTask', args: { task: NUTS, reason: 'no time' } }],
        [{ kind: 'reopenTask', args: { task: NUTS, reason: 'time after all' } }],
        [{ kind: 'dropTask', args: { task: NUTS, reason: 'other wheels' } }],
      ),
    ).toEqual([
      "Mia carried over 'Wheel nuts' at Service B: no time",
      "Mia opened again 'Wheel nuts' at Service B: time after all",
      "Mia marked as not needed 'Wheel nuts' at Service B: other wheels",
    ]);
  });

  it('says what opened a task again by itself', () => {
    const words = wordsOf([close(NUTS)], [close(WHEEL), KAI, rulesOf({ reopens: [taskIdOf(NUTS)] })]);
    expect(words.at(-1)).toBe("Kai opened again 'Wheel nuts' at Service B, because of other work");
  });

  it('says what stood against a fact', () => {
    const missing = rulesOf({
      requiredReadings: [{ readingId: 'pad', position: 'FL' }],
      serviceStands: false,
    });
    const words = wordsOf(
      [{ kind: 'takeTask', args: { task: NUTS } }],
      [close(NUTS), KAI, missing],
      [close(NUTS), doerOf(JO, { revokedAt: 1 })],
    );
    expect(words.slice(1)).toEqual([
      "Kai closed 'Wheel nuts' at Service B; Mia had it at the time; the service had been cancelled; reading missing: pad thickness FL",
      "Jo closed 'Wheel nuts' at Service B; Kai had already done it; came in after the person had left the team",
    ]);
  });

  it('has words for snags, stages and signatures', () => {
    const signed = rulesOf({ needsSignature: true });
    expect(
      wordsOf(
        [SNAG],
        [{ ...SNAG, args: { ...SNAG.args, urgent: true } }, KAI],
        [{ ...SNAG, args: { ...SNAG.args, urgent: true, stop: true } }],
        [STAGE],
        [{ ...STAGE, args: { ...STAGE.args, driven: false } }],
        [close(LEAK), MIA, signed],
        [{ kind: 'signTask', args: { task: LEAK } }, KAI, signed],
      ),
    ).toEqual([
      'Mia raised a snag (RR): oil on the hub',
      'Kai raised an urgent snag (RR): oil on the hub; Mia had already raised it',
      'Mia raised a snag to stop for (RR): oil on the hub',
      'Mia confirmed SS3: driven',
      'Mia confirmed SS3: not driven',
      "Mia closed 'oil on the hub' at Service B",
      "Kai signed 'oil on the hub' at Service B",
    ]);
  });

  it('says of a signature in ink that it was ink, and who typed it', () => {
    const signed = rulesOf({ needsSignature: true });
    const ink = { kind: 'signTask', args: { task: LEAK, onPaper: true } } as const;
    const typed = doerOf(KAI, { enteredBy: JO });
    expect(wordsOf([SNAG], [close(LEAK), MIA, signed], [ink, typed, signed]).at(-1)).toBe(
      "Kai signed 'oil on the hub' at Service B, in ink on the printed sheet; entered by Jo",
    );
  });

  it('says of a signature by initials that it was initials, and under whose account', () => {
    const signed = rulesOf({ needsSignature: true });
    const initials = { kind: 'signTask', args: { task: LEAK, byInitials: true } } as const;
    const typed = doerOf(KAI, { enteredBy: MIA });
    expect(wordsOf([SNAG], [close(LEAK), MIA, signed], [initials, typed, signed]).at(-1)).toBe(
      "Kai signed 'oil on the hub' at Service B, by initials; entered by Mia",
    );
  });

  it('says what a control wrote, and what the event cost', () => {
    expect(
      wordsOf(
        [TIME],
        [{ ...TIME, args: { ...TIME.args, writtenAt: 47_400, heldMinutes: 3 } }, KAI],
        [{ kind: 'undo', args: { actionId: 'a2' } }, KAI],
      ),
    ).toEqual([
      'Mia wrote down 13:06 at TC4A',
      'Kai wrote down 13:10 at TC4A, held by the event for 3 minutes',
      'Kai took back: wrote down the time, at TC4A',
    ]);
  });

  it('tells the finish of a stage from its start', () => {
    expect(wordsOf([START], [FINISH], [{ kind: 'undo', args: { actionId: 'a2' } }])).toEqual([
      'Mia wrote down 13:09 at SS4',
      'Mia wrote down 13:17 at the finish of SS4',
      'Mia took back: wrote down the time, at the finish of SS4',
    ]);
  });

  it('has words for every fact of the car', () => {
    const record = (fact: CarFact): [ActionBody] => [{ ...FACT, args: { ...FACT.args, fact } }];
    const tyre = { kind: 'tyre', tyreId: 't', mark: '12', compound: 'soft', place: 'FL' } as const;
    const setting = {
      kind: 'setting',
      setting: 'bump',
      position: 'FL',
      from: '12',
      to: '14 clicks',
    } as const;
    const words = wordsOf(
      [FACT],
      record({ kind: 'fitted', cardId: 'wheel', position: null, words: 'by the crew' }),
      record({
        ...{ kind: 'fitted', cardId: 'wheel', position: 'FL', words: '' },
        ...{ because: 'wornOut', otherKind: true },
      }),
      record({ kind: 'modified', cardId: 'wheel', position: null, words: 'routed higher' }),
      record({ ...FACT.args.fact, brokenCardId: 'wheel' } as CarFact),
      record({ kind: 'out', forDay: true, cause: 'mechanical', cardId: 'wheel', words: '' }),
      record({ kind: 'out', forDay: false, cause: null, cardId: null, words: 'towed in' }),
      record({ kind: 'restarted', words: '' }),
      record({ kind: 'madeGood', of: taskIdOf(NUTS), words: '' }),
      record({ kind: 'prepared', cardIds: ['wheel', 'nuts'] }),
      record({ kind: 'gateChecked', checks: ['onStands', 'engineOff', 'extinguisherOut', 'wheelsChocked'] }),
      record({ kind: 'gateOpened', because: 'carDown' }),
      record({ kind: 'photo', of: taskIdOf(NUTS), words: 'thread torn', bytes: 9, sha256: '' }),
      record({ ...tyre, treadTenths: 65, coldMillibar: 1850, hotMillibar: 2100 }),
      record({ ...tyre, place: 'scrapped', treadTenths: null, coldMillibar: null, hotMillibar: null }),
      record({ ...setting, askedBy: 'driver', backToBase: false }),
      record({ ...setting, position: null, askedBy: 'coDriver', backToBase: true }),
    );
    expect(words).toEqual([
      'Mia recorded hard landing (FL): bang over the crest; on the road after SS3',
      "Mia recorded new parts for 'Wheels off': by the crew; on the road after SS3",
      "Mia recorded new parts of another kind for 'Wheels off' (FL), the old one was worn out; on the road after SS3",
      "Mia recorded that the part of 'Wheels off' was altered: routed higher; on the road after SS3",
      "Mia recorded hard landing (FL), in which a part of 'Wheels off' broke: bang over the crest; on the road after SS3",
      "Mia recorded that the car is out for the day (mechanical, a part of 'Wheels off'); on the road after SS3",
      'Mia recorded that the car is out (cause not stated): towed in; on the road after SS3',
      'Mia recorded that the car starts again; on the road after SS3',
      "Mia recorded that 'Wheel nuts' (temporary repair at Service B) is made good; on the road after SS3",
      'Mia recorded 2 jobs done; on the road after SS3',
      "Mia recorded before work: on stands, the stands on boards; wheels that stay down chocked; engine off; fire extinguisher out and within reach. Not so: the car's own extinguisher system pinned; on the road after SS3",
      'Mia recorded that the car came down, so the checks before work are due again; on the road after SS3',
      "Mia recorded a photo of 'Wheel nuts': thread torn; on the road after SS3",
      'Mia recorded tyre 12, soft: front left, tread 6.5 mm, 1.85 bar cold, 2.10 bar hot; on the road after SS3',
      'Mia recorded tyre 12, soft: given up; on the road after SS3',
      'Mia recorded the setting bump (FL) from 12 to 14 clicks, asked for by the driver; on the road after SS3',
      'Mia recorded the setting bump from 12 to 14 clicks, back to base, asked for by the co-driver; on the road after SS3',
    ]);
  });

  it('says where a fact belongs, and that it was taken back', () => {
    const words = wordsOf(
      [{ ...FACT, args: { ...FACT.args, at: { kind: 'service', serviceId: 'B' } } }],
      [{ ...FACT, args: { ...FACT.args, factId: 'other', at: { kind: 'road', afterStageId: null } } }],
      [{ kind: 'undo', args: { actionId: 'a2' } }],
      [FACT, KAI],
    );
    expect(words).toEqual([
      'Mia recorded hard landing (FL): bang over the crest; at Service B',
      'Mia recorded hard landing (FL): bang over the crest; on the road before the first stage',
      'Mia took back: recorded, hard landing (FL): bang over the crest',
      'Kai recorded hard landing (FL): bang over the crest; on the road after SS3; Mia had already recorded it; the first stands',
    ]);
  });

  it('says what was taken back, and whose it was', () => {
    const manager = doerOf(JO, { mayManage: true });
    const words = wordsOf(
      [{ kind: 'startTask', args: { task: NUTS } }],
      [{ kind: 'undo', args: { actionId: 'a1' } }],
      [SNAG],
      [{ kind: 'undo', args: { actionId: 'a3' } }, manager],
      [STAGE],
      [{ kind: 'undo', args: { actionId: 'a5' } }],
    );
    expect(words.filter((sentence) => sentence.includes('took back'))).toEqual([
      "Mia took back: took and started, 'Wheel nuts' at Service B",
      'Jo took back what Mia did: raised a snag, the snag (RR): oil on the hub',
      'Mia took back: confirmed, SS3',
    ]);
  });
});
