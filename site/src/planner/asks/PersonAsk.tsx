import { SavedAsk, SetAsk } from '../foldedParts.ts';
import { rememberUnit } from '../link/rememberedUnit.ts';
import { setsOfOtherLifts } from '../state/setEdits.ts';
import { textAt } from '../state/tree.ts';
import { useAsking } from './Asking.ts';
import { ChoiceAsk } from './fields/ChoiceAsk.tsx';
import { DayAsk } from './fields/DayAsk.tsx';
import { FieldRow } from './fields/FieldRow.tsx';
import { Fold } from './fields/Fold.tsx';
import { LoadAsk } from './fields/LoadAsk.tsx';
import { NumberAsk } from './fields/NumberAsk.tsx';
import { SelectAsk } from './fields/SelectAsk.tsx';
import { WordsAsk } from './fields/WordsAsk.tsx';
import { TodayButton } from './TodayButton.tsx';
import { words } from './words.ts';

const at = (field: string) => ['client', field];
const intent = (field: string) => ['intent', field];

/** The person, and the day. */
export function PersonAsk() {
  const { draft } = useAsking();
  const others = setsOfOtherLifts(draft);
  const asked = words.asks;
  return (
    <>
      <div class="saved">
        <SavedAsk part="client" />
      </div>
      <FieldRow at={[at('name'), at('bodyWeight')]} help={asked.bodyWeightHelp}>
        <WordsAsk at={at('name')} label={asked.client} isPart />
        <LoadAsk
          at={at('bodyWeight')}
          label={asked.bodyWeight}
          step={{ kg: 1, lb: 2 }}
          isOptional
          isPart
        />
      </FieldRow>
      <FieldRow at={[at('experience'), at('alone')]}>
        <ChoiceAsk
          at={at('experience')}
          label={asked.experience}
          choices={asked.experiences}
          isPart
        />
        <ChoiceAsk at={at('alone')} label={asked.alone} choices={asked.aloneChoices} isPart />
      </FieldRow>
      <FieldRow at={[intent('date')]}>
        <DayAsk at={intent('date')} label={asked.date} isPart />
        <TodayButton />
      </FieldRow>
      <FieldRow at={[intent('changeSeconds'), intent('unit')]} help={asked.changeHelp}>
        <NumberAsk
          at={intent('changeSeconds')}
          label={asked.change}
          min={0}
          max={1800}
          step={15}
          unit="s"
          isPart
        />
        <UnitAsk />
      </FieldRow>
      <FieldRow
        at={[intent('minutesAtMost'), intent('overrules')]}
        help={asked.minutesHelp}
        lines={2}
      >
        <NumberAsk
          at={intent('minutesAtMost')}
          label={asked.minutes}
          min={1}
          max={600}
          step={5}
          start={30}
          unit="min"
          isOptional
          isPart
        />
        <DayAsk at={[...intent('overrules'), 'nextDate']} label={asked.next} isOptional isPart />
      </FieldRow>
      {others.length > 0 && (
        <Fold
          title={asked.otherSets(others.length)}
          places={others.map((place) => ['client', 'sets', place])}
        >
          {others.map((place, index) => (
            <SetAsk key={place} place={place} number={index + 1} isNamed />
          ))}
        </Fold>
      )}
    </>
  );
}

/** The unit in which loads are said, kept for the next visit. */
function UnitAsk() {
  const { draft, set } = useAsking();
  return (
    <SelectAsk
      at={intent('unit')}
      label={words.asks.unit}
      options={[
        ['kg', 'kg'],
        ['lb', 'lb'],
      ]}
      value={textAt(draft, intent('unit'))}
      onValue={(unit) => {
        rememberUnit(unit);
        set(intent('unit'), unit);
      }}
      isPart
    />
  );
}
