import fc from 'fast-check';

// Every mutant runs the tests again; a law that needs more cases than these to see one is too weak.
fc.configureGlobal({ ...fc.readConfigureGlobal(), numRuns: 25 });
