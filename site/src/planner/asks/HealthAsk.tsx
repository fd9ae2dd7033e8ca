import { ClinicianAsk, ComplaintsAsk, ListAsk, PressureAsk } from '../foldedParts.ts';
import { useAsking } from './Asking.ts';
import { ChoiceAsk } from './fields/ChoiceAsk.tsx';
import { Fold } from './fields/Fold.tsx';
import { NumberAsk } from './fields/NumberAsk.tsx';
import { healthAnswer } from './healthAnswer.ts';
import { words } from './words.ts';

const asked = words.health;
const at = (field: string) => ['client', 'health', field];

/** What is asked of a person before training, one plain question after another. */
export function HealthAsk() {
  const { draft } = useAsking();
  const answer = (path: readonly string[], choices: Readonly<Record<string, string>> = {}) =>
    healthAnswer(draft, path, choices);
  return (
    <div class="folds">
      <p class="soft">{asked.says}</p>
      <ListFold field="symptoms" title={asked.symptoms} choices={asked.symptomNames} />
      <ListFold field="conditions" title={asked.conditions} choices={asked.conditionNames} />
      <Fold
        title={asked.pressure}
        answer={answer([...at('bloodPressure'), 'status'], asked.pressureChoices)}
        places={[at('bloodPressure')]}
      >
        <PressureAsk />
      </Fold>
      <Fold
        title={asked.complaints}
        answer={answer(at('complaints'), asked.complaintNames)}
        places={[at('complaints')]}
      >
        <ComplaintsAsk />
      </Fold>
      <Fold
        title={asked.clinician}
        answer={answer([...at('clinician'), 'by'], asked.clinicianChoices)}
        places={[at('clinician')]}
      >
        <ClinicianAsk />
      </Fold>
      <ChoiceFold field="activity" title={asked.activity} choices={asked.activityChoices} />
      <ChoiceFold field="pregnancy" title={asked.pregnancy} choices={asked.pregnancyChoices} />
      <ChoiceFold
        field="loweringHeavyWork"
        title={asked.lowering}
        choices={asked.loweringChoices}
      />
      <Fold title={asked.age} answer={answer(at('ageYears'))} places={[at('ageYears')]}>
        <NumberAsk
          at={at('ageYears')}
          label={asked.age}
          min={5}
          max={110}
          start={30}
          unit={asked.years}
          isOptional
        />
      </Fold>
    </div>
  );
}

interface QuestionProps {
  readonly field: string;
  readonly title: string;
  readonly choices: Readonly<Record<string, string>>;
}

function ListFold({ field, title, choices }: QuestionProps) {
  const { draft } = useAsking();
  return (
    <Fold title={title} answer={healthAnswer(draft, at(field), choices)} places={[at(field)]}>
      <ListAsk at={at(field)} label={title} choices={choices} isLabelHidden />
    </Fold>
  );
}

function ChoiceFold({ field, title, choices }: QuestionProps) {
  const { draft } = useAsking();
  return (
    <Fold title={title} answer={healthAnswer(draft, at(field), choices)} places={[at(field)]}>
      <ChoiceAsk at={at(field)} label={asked.answer} choices={choices} nothing={asked.notAsked} />
    </Fold>
  );
}
