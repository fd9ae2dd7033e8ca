import { getAt, listAt, setAt, textAt } from '../state/tree.ts';
import { useAsking } from './Asking.ts';
import { ChoiceAsk } from './fields/ChoiceAsk.tsx';
import { DayAsk } from './fields/DayAsk.tsx';
import { LinesAsk } from './fields/LinesAsk.tsx';
import { ListAsk } from './fields/ListAsk.tsx';
import { NumberAsk } from './fields/NumberAsk.tsx';
import { SelectAsk } from './fields/SelectAsk.tsx';
import { words } from './words.ts';

const asked = words.health;
const path = ['client', 'health', 'clinician'];
const at = (field: string) => [...path, field];

/** What a licensed clinician has said about this person; it comes before the plan's own limits. */
export function ClinicianAsk() {
  const { draft, set, change } = useAsking();
  const choose = (chosen: string) =>
    chosen === '' ? set(path, undefined) : change((before) => setAt(before, at('by'), chosen));
  return (
    <>
      <SelectAsk
        at={at('by')}
        label={asked.clinicianBy}
        options={[['', asked.nobody], ...Object.entries(asked.clinicianChoices)]}
        value={textAt(draft, at('by'))}
        onValue={choose}
      />
      {getAt(draft, path) !== undefined && <ClinicianLimits />}
    </>
  );
}

function ClinicianLimits() {
  const { draft } = useAsking();
  const said = { choices: asked.permission, nothing: asked.notSaid } as const;
  const hasList =
    listAt(draft, at('notAllowed')).length > 0 || listAt(draft, at('handsOutOfUse')).length > 0;
  return (
    <>
      <ChoiceAsk
        at={at('agreesToTraining')}
        label={asked.agrees}
        choices={asked.yesNo}
        nothing={asked.notSaid}
      />
      <LinesAsk at={at('notAllowed')} label={asked.notAllowed} help={asked.notAllowedHelp} />
      <ListAsk at={at('handsOutOfUse')} label={asked.handsOut} choices={asked.hands} />
      {(hasList || textAt(draft, at('until')) !== '') && (
        <DayAsk at={at('until')} label={asked.until} isOptional />
      )}
      <NumberAsk
        at={at('painLimit')}
        label={asked.painLimit}
        min={0}
        max={10}
        start={3}
        isOptional
      />
      <NumberAsk
        at={at('repsInReserve')}
        label={asked.repsInReserve}
        min={0}
        max={20}
        start={2}
        isOptional
      />
      <NumberAsk
        at={at('intensityCap')}
        label={asked.intensityCap}
        help={asked.intensityHelp}
        min={0.05}
        max={1}
        step={0.05}
        start={0.7}
        isOptional
      />
      <ChoiceAsk at={at('failureChains')} label={asked.failureChains} {...said} />
      <ChoiceAsk at={at('longHolds')} label={asked.longHolds} {...said} />
      <ChoiceAsk at={at('maximalSingles')} label={asked.maximalSingles} {...said} />
    </>
  );
}
