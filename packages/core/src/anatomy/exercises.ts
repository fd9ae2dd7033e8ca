import type { Exercise } from './Exercise.ts';
import { backExtensions } from './exercises/backExtensions.ts';
import { bracing, carries } from './exercises/bracing.ts';
import { chestFlies } from './exercises/chestFlies.ts';
import { chestPresses } from './exercises/chestPresses.ts';
import { crunches } from './exercises/crunches.ts';
import { curls } from './exercises/curls.ts';
import { dips } from './exercises/dips.ts';
import { forearms } from './exercises/forearms.ts';
import { hinges } from './exercises/hinges.ts';
import { hipSides } from './exercises/hipSides.ts';
import { hipThrusts } from './exercises/hipThrusts.ts';
import { inclinePresses } from './exercises/inclinePresses.ts';
import { legCurls } from './exercises/legCurls.ts';
import { legMachines } from './exercises/legMachines.ts';
import { lowerLegs } from './exercises/lowerLegs.ts';
import { overheadPresses } from './exercises/overheadPresses.ts';
import { rearDeltoidFlies } from './exercises/rearDeltoidFlies.ts';
import { rows } from './exercises/rows.ts';
import { shoulderRaises } from './exercises/shoulderRaises.ts';
import { shoulderRotations } from './exercises/shoulderRotations.ts';
import { shrugs, uprightRows } from './exercises/shrugs.ts';
import { splitSquats, stepUps } from './exercises/splitSquats.ts';
import { squats } from './exercises/squats.ts';
import { straightArmPulls } from './exercises/straightArmPulls.ts';
import { tricepsExtensions } from './exercises/tricepsExtensions.ts';
import { trunkSides } from './exercises/trunkSides.ts';
import { verticalPulls } from './exercises/verticalPulls.ts';

/**
 * Every exercise the library knows. An application may add its own of the same shape.
 *
 * Shares, moment arms and body-weight shares are conventions of this project unless a source says
 * otherwise: prime movers and helpers follow the textbook actions in `muscles`, and helpers of
 * presses and pulls (triceps, elbow flexors) are `indirect`, as the dose-response literature counts
 * them.
 *
 * The lists are built in functions marked as pure, so that an application that does not use them
 * does not carry them.
 */
export const exercises: readonly Exercise[] = /* @__PURE__ */ (() => [
  ...rows,
  ...verticalPulls,
  ...straightArmPulls,
  ...chestPresses,
  ...inclinePresses,
  ...overheadPresses,
  ...dips,
  ...chestFlies,
  ...shoulderRaises,
  ...rearDeltoidFlies,
  ...uprightRows,
  ...shrugs,
  ...shoulderRotations,
  ...curls,
  ...tricepsExtensions,
  ...forearms,
  ...squats,
  ...legMachines,
  ...splitSquats,
  ...stepUps,
  ...hinges,
  ...hipThrusts,
  ...legCurls,
  ...hipSides,
  ...lowerLegs,
  ...crunches,
  ...backExtensions,
  ...bracing,
  ...trunkSides,
  ...carries,
])();
