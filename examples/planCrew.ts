import { planSession } from '@windlass/core/session';
import { crewQuestion, type Workload } from './crewQuestion.ts';

/** Members of a crew, from one number up to before another. */
export interface CrewBatch {
  readonly workload: Workload;
  readonly from: number;
  readonly to: number;
}

/** What came of a batch: small, because it goes from one thread to another. */
export interface CrewPlans {
  readonly plans: number;
  /** Minutes of all sessions together. */
  readonly minutes: number;
}

/** Plans a session for each, one after another. A pool of workers runs this file. */
export default function planCrew({ workload, from, to }: CrewBatch): CrewPlans {
  const questionOf = crewQuestion(workload);
  let minutes = 0;
  for (let member = from; member < to; member += 1) {
    const plan = planSession(questionOf(member));
    if (plan.kind !== 'session') throw new Error(`crew member ${member}: ${plan.kind}`);
    minutes += plan.minutes.total;
  }
  return { plans: to - from, minutes };
}
