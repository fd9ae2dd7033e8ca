/**
 * Words of the trade for what a tool answers, where the tool itself says it in others. By the id
 * of the calculator.
 */
export const otherWords: Readonly<Record<string, string>> = {
  'load-for-window': 'how heavy weight kilos pounds rep range RIR RPE percent 1RM reps to failure',
  'first-load': 'starting weight new exercise first time weight to begin with',
  'strength-from-sets': '1RM one rep max e1RM strength test estimate',
  'warm-up-ramp': 'warmup warm-up sets ramp up pyramid build up',
  'bar-loading': 'plates barbell plate math how to load',
  'gym-loads': 'dumbbells machines stack pulley available weights increments jumps',
  'past-failure':
    'drop set rest pause forced reps negatives eccentrics isometrics partials beyond failure',
  pair: 'superset pre-exhaust preexhaustion compound isolation',
  exchange: 'substitute swap alternative replacement pain injury instead of',
  'compare-equations': '1RM formulas rep max one rep max percent',
  'tempo-seconds': 'time under tension TUT cadence slow reps eccentric concentric',
};
