/** Every word around the guides; their own stand in `content/guides`. */
export const words = {
  title: 'Guides',
  description:
    'Short guides for coaches: choosing a load, slow reps, warming up, pairs, past failure, when to train again, reading a stall, what is known.',
  says: 'One idea each, with a live tool to try it on and the study behind every claim.',
  further: 'Further guides',
  next: 'Next guide',
  last: 'Then',
  plan: 'Plan a session',
};
