import type { Caution } from './Caution.ts';
import type { ClientHealth, TrainingContext } from './ClientHealth.ts';
import { rulesFor } from './rulesFor.ts';

const GRAVEST_FIRST: readonly Caution['level'][] = ['stop', 'caution', 'note'];

/**
 * The cautions that apply to this person and this kind of training, the gravest first.
 *
 * They flag and defer: an empty list says that no rule applied to the answers given, and nothing
 * about the person's health.
 *
 * @param client what was asked; a question that was left out brings the note that it was.
 * @param context what is planned and with whom; vigorous, accompanied work when empty.
 * @returns each caution once, with its reason, its alternative, whom to ask and its sources.
 * @example
 * ```ts
 * import { cautionsFor } from '@windlass/core/safety';
 * const asked = { symptoms: [], conditions: [], activity: 'active' } as const;
 * const cautions = cautionsFor({ ...asked, bloodPressure: { status: 'untreated' } }, { alone: true });
 * cautions.map((caution) => caution.id); // ['blood-pressure-untreated', 'alone']
 * ```
 */
export function cautionsFor(
  client: ClientHealth,
  context: TrainingContext = {},
): readonly Caution[] {
  const { general, complaints, flags } = rulesFor(client, context);
  const agreed = client.clinician?.agreesToTraining === true;
  const cautions = [
    ...flags.map(({ rule }) =>
      agreed && rule.pauses === 'joint' ? eased(rule.caution) : rule.caution,
    ),
    ...general.map((rule) => rule.caution),
    ...complaints.map((rule) =>
      rule.needsClinician && !agreed ? stopping(rule.caution) : rule.caution,
    ),
  ];
  const once = cautions.filter(
    (caution, at) => cautions.findIndex(({ id }) => id === caution.id) === at,
  );
  return GRAVEST_FIRST.flatMap((level) => once.filter((caution) => caution.level === level));
}

function eased(caution: Caution): Caution {
  return { ...caution, level: 'caution' };
}

function stopping(caution: Caution): Caution {
  return { ...caution, level: 'stop' };
}
