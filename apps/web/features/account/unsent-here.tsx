import { ChoiceGroup } from '@/components/choice-group';
import { Disclosure } from '@/components/disclosure';
import { Notice } from '@/components/notice';
import type { WaitingAction } from '../work/waiting-action';
import { countByName, entriesOf, photosOfPerson } from '../work/waiting-in-words';
import styles from './account.module.css';

/** Longer, nobody reads it, and the dialog would not fit. */
const MOST_LISTED = 30;

export interface UnsentHereProps {
  waiting: readonly WaitingAction[];
  photos: readonly { ownerName: string }[];
  isHelper: boolean;
  throwsAway: boolean;
  onChoose: (throwsAway: boolean) => void;
}

/** Before a person leaves: what was not sent, whose it is, and whether it stays. Nothing is lost unless that is chosen. */
export function UnsentHere({ waiting, photos, isHelper, throwsAway, onChoose }: UnsentHereProps) {
  const whose = [
    ...countByName(waiting).map(({ name, count }) => entriesOf(name, count)),
    ...countByName(photos).map(({ name, count }) => photosOfPerson(name, count)),
  ];
  const count = waiting.length + photos.length;
  const isOne = count === 1;
  const more = waiting.length - MOST_LISTED;
  return (
    <>
      <Notice kind="warning" title="Not sent yet">
        <p>
          {whose.join(', ')}. {isOne ? 'It stays' : 'They stay'} on this phone until the person signs in here
          again.
        </p>
        {isHelper ? (
          <p>
            What is yours could then never be sent, since you came by a link: stay signed in until there is a
            connection.
          </p>
        ) : null}
        {waiting.length > 0 ? (
          <Disclosure summary={isOne ? 'What it is' : 'What they are'}>
            <ul className={styles.list}>
              {waiting.slice(0, MOST_LISTED).map(({ action, words, eventName }) => (
                <li key={action.actionId}>
                  {words} ({eventName})
                </li>
              ))}
            </ul>
            {more > 0 ? <p>And {more} more.</p> : null}
          </Disclosure>
        ) : null}
      </Notice>
      <ChoiceGroup
        label="This phone goes to other hands?"
        pick="many"
        choices={[
          {
            value: 'throwAway',
            label: isOne ? 'Throw it away' : `Throw all ${count} away`,
            hint: isOne ? 'Nobody will ever see what it says.' : 'Nobody will ever see what they say.',
          },
        ]}
        chosen={throwsAway ? ['throwAway'] : []}
        onChange={(event) => onChoose(event.target.checked)}
      />
    </>
  );
}
