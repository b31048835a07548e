import type { Finding, FindingGrade, PersonId, Task } from '@halfshaft/worklog';

export const GRADE_WORDS: Record<FindingGrade, string> = {
  ok: 'OK',
  watch: 'keep an eye',
  needsWork: 'needs work',
  temporaryRepair: 'temporary repair',
};

export interface TaskWords {
  nameOf: (id: PersonId) => string;
  /** The person who reads it. */
  me: PersonId;
  /** Beyond this seq the server has not answered yet. */
  confirmedSeq: number;
}

/**
 * What has become of a task, for its line in a list.
 *
 * @example
 * taskInWords(task, words) // 'Mia has it'
 */
export function taskInWords(task: Task, { nameOf, me, confirmedSeq }: TaskWords): string {
  const asked = task.changedSeq > confirmedSeq;
  const name = (id: PersonId | null) => (id === null ? 'someone' : id === me ? 'you' : nameOf(id));
  const has = task.holder === me ? 'have' : 'has';
  switch (task.state) {
    case 'open':
      return task.round > 1 ? `open again${reasonWords(task)}` : 'open';
    case 'claimed':
      return asked ? `asked for by ${name(task.holder)}` : `${name(task.holder)} ${has} it`;
    case 'underWay':
      return `${name(task.holder)} ${task.holder === me ? 'are' : 'is'} at it`;
    case 'done':
      return doneInWords(task, name);
    case 'carriedOver':
      return `carried over${reasonWords(task)}`;
    case 'notNeeded':
      return `not needed${reasonWords(task)}`;
  }
}

function doneInWords(task: Task, name: (id: PersonId | null) => string): string {
  const by = [task.doneBy, ...task.alsoDoneBy].map(name).join(' and ');
  if (task.signedBy !== null) return `done by ${by}, signed by ${name(task.signedBy)}`;
  return task.needsSignature ? `done by ${by}, a second person must sign` : `done by ${by}`;
}

function reasonWords({ reason }: Task): string {
  return reason === null ? '' : `: ${reason}`;
}

/**
 * A finding in one line.
 *
 * @example
 * findingInWords({ lookId: 'pads', position: 'FL', grade: 'needsWork', words: 'down to 2 mm' }, looks)
 * // 'FL, pads and discs: needs work. down to 2 mm'
 */
export function findingInWords(finding: Finding, looks: readonly { id: string; words: string }[]): string {
  const look = looks.find((each) => each.id === finding.lookId)?.words;
  const where = [finding.position, look].filter(Boolean).join(', ');
  const grade = `${GRADE_WORDS[finding.grade]}${finding.newPart ? ', a new part went on' : ''}`;
  const said = finding.words === '' ? grade : `${grade}. ${finding.words}`;
  return where === '' ? said : `${where}: ${said}`;
}

/** As much as a snag may say. */
export const MOST_SNAG_CHARACTERS = 300;

/** What a finding says once it is raised as a snag: `words` as `findingInWords` has them. */
export function snagOfFinding(words: string, title: string): string {
  return `${words} (${title})`.slice(0, MOST_SNAG_CHARACTERS);
}
