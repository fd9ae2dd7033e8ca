import type { EquipmentKind } from '../state/gymEdits.ts';
import { getAt, listAt, type Path, textAt } from '../state/tree.ts';
import { useAsking } from './Asking.ts';
import { CheckLine } from './fields/CheckLine.tsx';
import { ChoiceAsk } from './fields/ChoiceAsk.tsx';
import { LinesAsk } from './fields/LinesAsk.tsx';
import { LoadAsk } from './fields/LoadAsk.tsx';
import { NumberAsk } from './fields/NumberAsk.tsx';
import { PieceRows } from './PieceRows.tsx';
import { words } from './words.ts';

const named = words.gym.fields;
const { dumbbell, kettlebell, barbell, landmine, belt } = words.gym.forms;
const fixedForms = { dumbbell, kettlebell, barbell };
const postForms = { landmine, 'loading-pin': words.gym.forms['loading-pin'], belt };
const one = { 1: '1', 2: '2' };

interface EquipmentFieldsProps {
  readonly kind: EquipmentKind;
  readonly path: Path;
}

/** What has to be known of a piece of equipment, by its kind. */
export function EquipmentFields({ kind, path }: EquipmentFieldsProps) {
  const at = (field: string) => [...path, field];
  switch (kind) {
    case 'barbell':
      return (
        <>
          <LoadAsk at={at('bar')} label={named.bar} />
          <LoadAsk at={at('collar')} label={named.collar} help={words.gym.empty} isOptional />
          <PlateFields path={path} />
        </>
      );
    case 'one-post':
      return (
        <>
          <ChoiceAsk at={at('form')} label={named.form} choices={postForms} />
          <LoadAsk at={at('base')} label={named.base} />
          <PlateFields path={path} />
        </>
      );
    case 'fixed':
      return (
        <>
          <ChoiceAsk at={at('form')} label={named.form} choices={fixedForms} />
          <PieceRows at={at('weights')} label={named.weights} fewest={1} />
          <PieceRows at={at('addOns')} label={named.addOns} isOptional />
        </>
      );
    case 'handles':
      return (
        <>
          <LoadAsk at={at('handle')} label={named.handle} />
          <ChoiceAsk at={at('handles')} label={named.handles} choices={one} />
          <PlateFields path={path} />
        </>
      );
    case 'stack':
      return (
        <>
          <LoadAsk at={at('first')} label={named.first} />
          <PieceRows at={at('rest')} label={named.rest} />
          <PieceRows at={at('addOns')} label={named.addOns} isOptional />
          <NumberAsk
            at={at('pulleyRatio')}
            label={named.pulleyRatio}
            min={0.1}
            max={10}
            start={1}
          />
        </>
      );
    case 'machine':
      return <MachineFields path={path} />;
    case 'body':
      return <BodyFields path={path} />;
    case 'band':
      return <p class="soft">{words.gym.bandHelp}</p>;
  }
}

/** Plates that only this takes, and how many fit. */
function PlateFields({ path }: { readonly path: Path }) {
  return (
    <>
      <NumberAsk
        at={[...path, 'sleeveMm']}
        label={named.sleeveMm}
        help={words.gym.empty}
        min={0}
        max={5000}
        step={10}
        start={300}
        unit="mm"
        isOptional
      />
      <PieceRows
        at={[...path, 'plates']}
        label={words.gym.ownPlates}
        add={words.gym.addPlate}
        help={words.gym.ownPlatesHelp}
        isOptional
      />
    </>
  );
}

function MachineFields({ path }: { readonly path: Path }) {
  const { draft, set } = useAsking();
  const at = (field: string) => [...path, field];
  const isUnknown = textAt(draft, at('start')) === 'unknown';
  return (
    <>
      <ChoiceAsk at={at('posts')} label={named.posts} choices={one} />
      <CheckLine
        isOn={isUnknown}
        onToggle={(isOn) => set(at('start'), isOn ? 'unknown' : '0 kg')}
        label={words.gym.startUnknown}
      />
      {!isUnknown && <LoadAsk at={at('start')} label={named.start} />}
      <NumberAsk
        at={at('railDegrees')}
        label={named.railDegrees}
        help={words.gym.empty}
        min={1}
        max={90}
        start={45}
        unit="°"
        isOptional
      />
      <NumberAsk
        at={at('leverRatio')}
        label={named.leverRatio}
        help={words.gym.empty}
        min={0.05}
        max={10}
        step={0.05}
        start={1}
        isOptional
      />
      <PlateFields path={path} />
    </>
  );
}

function BodyFields({ path }: { readonly path: Path }) {
  const { draft, set } = useAsking();
  const belt = [...path, 'belt'];
  const hasBelt = getAt(draft, belt) !== undefined;
  return (
    <>
      <CheckLine
        isOn={hasBelt}
        onToggle={(isOn) => set(belt, isOn ? {} : undefined)}
        label={words.gym.belt}
      />
      {hasBelt && (
        <>
          <LoadAsk
            at={[...belt, 'base']}
            label={named.beltBase}
            help={words.gym.empty}
            isOptional
          />
          <PieceRows at={[...belt, 'pieces']} label={named.beltPieces} isOptional />
          {listAt(draft, [...belt, 'plates']).length > 0 && (
            <PieceRows at={[...belt, 'plates']} label={words.gym.ownPlates} isOptional />
          )}
        </>
      )}
      <LinesAsk at={[...path, 'assistance']} label={named.assistance} help={words.gym.assistance} />
    </>
  );
}
