import fc from 'fast-check';
import { LAW_CASES } from './lawCases.ts';

// One failing case is enough: nobody reads the smallest.
fc.configureGlobal({ ...fc.readConfigureGlobal(), numRuns: LAW_CASES, endOnFailure: true });
