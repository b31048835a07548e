import type { CarFact, CarSetting, FactPlace } from '@halfshaft/worklog';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { SelectField } from '@/components/select-field';
import { TextField } from '@/components/text-field';
import type { Visit } from '../service/visit';
import { WhenField } from '../tyres/when-field';
import type { LoadedWork } from '../work/work-page';
import { AskedBy, type Asker } from './asked-by';
import { SETTING_POSITIONS, settingName } from './setting-name';

interface SettingDialogProps {
  work: LoadedWork;
  visit: Visit;
  /** Null: one not changed so far. */
  of: CarSetting | null;
  record: (fact: CarFact, at: FactPlace) => void;
  onClose: () => void;
}

/** What was changed, where, from what to what, and who asked. */
export function SettingDialog({ work, visit, of, record, onClose }: SettingDialogProps) {
  const [setting, setSetting] = useState(of?.setting ?? '');
  const [position, setPosition] = useState(of?.position ?? '');
  const [from, setFrom] = useState(of?.current ?? '');
  const [to, setTo] = useState('');
  const [askedBy, setAskedBy] = useState<Asker>('driver');
  const [at, setAt] = useState<FactPlace>({ kind: 'service', serviceId: visit.service.id });
  const [asked, setAsked] = useState(false);
  const missing = (text: string, words: string) => (asked && text.trim() === '' ? words : undefined);

  function finish() {
    setAsked(true);
    if (setting.trim() === '' || to.trim() === '') return;
    const what = { setting: setting.trim(), position: position === '' ? null : position };
    const step = { from: from.trim(), to: to.trim() };
    record({ kind: 'setting', ...what, ...step, askedBy, backToBase: false }, at);
    onClose();
  }

  return (
    <Dialog
      open
      onClose={onClose}
      title={of ? settingName(of) : 'Change a setting'}
      closeWords="Not now"
      actions={
        <Button look="main" onClick={finish}>
          Write it down
        </Button>
      }
    >
      {of ? null : (
        <>
          <TextField
            label="What is changed?"
            hint="Such as bump, rebound, ride height, toe or brake balance."
            maxLength={60}
            error={missing(setting, 'Type what is changed.')}
            value={setting}
            onChange={(event) => setSetting(event.target.value)}
          />
          <SelectField
            label="Where?"
            options={SETTING_POSITIONS}
            value={position}
            onChange={(event) => setPosition(event.target.value)}
          />
        </>
      )}
      <TextField
        label="From"
        hint={of ? undefined : 'With its unit, such as 12 clicks. The first one is the base to go back to.'}
        optional
        maxLength={40}
        value={from}
        onChange={(event) => setFrom(event.target.value)}
      />
      <TextField
        label="To"
        maxLength={40}
        error={missing(to, 'Type what it is set to now.')}
        value={to}
        onChange={(event) => setTo(event.target.value)}
      />
      <AskedBy label="Who asked for it?" chosen={askedBy} onChoose={setAskedBy} />
      <WhenField {...{ work, visit, at }} onChange={setAt} />
    </Dialog>
  );
}
