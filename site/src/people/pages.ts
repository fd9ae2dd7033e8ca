import { href } from '../lib/href.ts';

/** The planner with a kept person in their usual gym. */
export function planForClient(id: string): string {
  return `${href('/plan/')}?person=${id}`;
}

/** The planner in a kept gym. */
export function planInGym(id: string): string {
  return `${href('/plan/')}?gym=${id}`;
}
