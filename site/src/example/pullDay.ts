import gym from '../../../examples/boathouse/gym.json' with { type: 'json' };
import day from '../../../examples/boathouse/pull-day.json' with { type: 'json' };

/** The pull session of the boathouse: a client with a log, a gym, and what the coach wants. */
export const pullDay: unknown = { ...day, gym };
