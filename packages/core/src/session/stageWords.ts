import { positionWords, type Stage } from '../extension/index.ts';

/** A stage of a chain as it is to be done. */
export function stageWords(stage: Stage): string {
  switch (stage.kind) {
    case 'lift':
      return 'lift until a rep cannot be finished';
    case 'hold':
      return `hold ${positionWords[stage.at]}, ${stage.maxSeconds} s at most`;
    case 'lower':
      return stage.maxLowerings === 1
        ? `lower once, over ${stage.secondsEach} s`
        : `lower ${stage.maxLowerings} times at most, each over ${stage.secondsEach} s`;
    case 'part-range':
      return `${stage.maxReps} reps at most through the long half of the range`;
    case 'lighter':
      return `take ${Math.round(100 * (1 - stage.loadShare))} % off and lift on without rest`;
    case 'pause':
      return `pause ${stage.seconds} s and lift on`;
    case 'assisted':
      return stage.reps === 1
        ? 'one rep with a partner’s help'
        : `${stage.reps} reps with a partner’s help`;
  }
}
