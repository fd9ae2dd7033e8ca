import { ageRules } from '../safety/rules/ageRules.ts';
import { bloodPressureRules } from '../safety/rules/bloodPressureRules.ts';
import { pregnancyRules } from '../safety/rules/pregnancyRules.ts';
import { screeningRules } from '../safety/rules/screeningRules.ts';

/** For whom going on past lifting failure is not planned: what the safety rules say that refuse it. */
export const notForChains: readonly string[] = /* @__PURE__ */ (() =>
  [ageRules, bloodPressureRules, pregnancyRules, screeningRules]
    .flat()
    .filter(({ limits }) => limits?.failureChains === 'refused' || limits?.training === 'refused')
    .map(({ caution }) => caution.what))();
