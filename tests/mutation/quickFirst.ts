import { statSync } from 'node:fs';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** A mutant is done with its first failing test, so the laws, which try many cases, come last. */
export class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const cost = ({ moduleId }: TestSpecification) =>
      statSync(moduleId).size + (/\.(prop|oracle)\.test\.ts$/.test(moduleId) ? 1e9 : 0);
    return [...files].sort((a, b) => cost(a) - cost(b));
  }
}
