import { describe, expect, it } from 'vitest';
import type { NoAnswer } from '../contract/Answer.ts';
import { runSnippet } from '../testing/runSnippet.ts';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { exchange } from './definition.ts';

type Texts = Readonly<Record<string, string>>;

function noAnswer(texts: Texts): NoAnswer {
  const answer = exchange.answer(texts);
  if (answer.kind !== 'none') throw new Error(`an answer: ${answer.kind}`);
  return answer;
}

/** Names in their order, from the reasons behind the rank. */
const offered = (texts: Texts) =>
  shownResult(exchange, texts).why.steps.map((step) => step.replace(/: [−\d.]+$/, ''));
const details = (texts: Texts) => viewText(shownResult(exchange, texts).details());
const own = (loads: string, stations: string) => ({ place: 'own', loads, stations });
const ease = { complaints: '', exercise: 'barbell-bent-over-row' };

describe('set-ups first', () => {
  it('turns the palms before it gives the pulldown up', () => {
    const shown = shownResult(exchange, {});
    expect(shown.headline.label).toBe('Keep it, set up differently');
    expect(shown.headline.value).toBe('Cable pulldown');
    expect(shown.certainty.says).toMatch(/^Set up like this: palms facing each other\./);
    expect(shown.cautions.map(({ id }) => id)).toContain('elbow-outer');
  });

  it('says so where nothing speaks against the exercise', () => {
    const shown = shownResult(exchange, { complaints: '', company: 'partner' });
    expect(shown.headline.label).toMatch(/Nothing given here speaks against it/);
    expect(shown.headline.value).toBe('Cable pulldown');
  });
});

describe('front of the shoulder, low in the bench press', () => {
  const texts = {
    exercise: 'barbell-bench-press',
    complaints: 'shoulder-front-bottom-of-press',
    ...own('dumbbell,stack', 'flat-bench,cable'),
  };

  it('offers two to five presses with a shorter bottom or arms that turn, and nothing that is not there', () => {
    const names = offered(texts);
    expect(names.length).toBeGreaterThanOrEqual(2);
    expect(names.length).toBeLessThanOrEqual(5);
    expect(names.join()).toMatch(/floor press/i);
    expect(names.join()).not.toMatch(/barbell|machine|\bdip\b/i);
  });

  it('leaves dips and wide flies out, starts lighter, stops for pain, and asks about grave signs', () => {
    const text = details(texts);
    expect(text).toMatch(/Start lighter/);
    expect(text).toMatch(/Pain that rises/);
    expect(text).toMatch(/Left out, and why/);
    const asked = shownResult(exchange, texts).cautions.find(
      ({ id }) => id === 'signs-beside-a-complaint',
    );
    expect(asked?.ask).toContain('physiotherapist');
    expect(text).not.toMatch(/impingement|tendinopathy|tear/i);
  });
});

describe('elbows in lying extensions', () => {
  const texts = {
    exercise: 'lying-dumbbell-triceps-extension',
    complaints: 'elbow-back-or-inner',
    ...own('dumbbell,stack', 'flat-bench,cable'),
  };

  it('with tingling fingers: a clinician first, and no list', () => {
    const answer = noAnswer({ ...texts, flags: 'numbness-or-tingling' });
    expect(answer.reason).toBe('ask-first');
    expect(viewText(answer.view?.())).toMatch(/numbness or tingling.*Ask a physician/);
    expect(answer.cautions?.[0]).toMatchObject({ level: 'stop' });
  });

  it('without it: free hands, and no deep bend, lying or overhead', () => {
    const names = offered(texts);
    expect(names.join()).toMatch(/pushdown/i);
    for (const name of names.filter((one) => /lying|overhead/i.test(one)))
      expect(name).toMatch(/only to a right angle at the elbow/);
  });
});

describe('legs at home, squats to be eased off', () => {
  const names = offered({
    wanted: 'legs',
    complaints: 'knee-front',
    notAllowed: 'squats',
    place: 'home',
  });

  it('offers hip work with what is there, no squat, lunge or deep split', () => {
    expect(names.length).toBeGreaterThanOrEqual(3);
    expect(names.length).toBeLessThanOrEqual(6);
    expect(names.join()).toMatch(/bridge|deadlift/i);
    expect(names.join()).not.toMatch(/squat|lunge|step-up|barbell|cable|machine|bench/i);
  });
});

describe('a clinician’s list for the back', () => {
  const list = 'shrugs, bent-over rows, deadlifts, squats, cleans, seated overhead press';
  const texts = (wanted: string) => ({
    wanted,
    complaints: '',
    notAllowed: list,
    place: 'full',
    company: 'partner',
  });

  it.each(['back', 'legs', 'shoulders'])(
    'keeps the %s trained without loading the spine',
    (area) => {
      const names = offered(texts(area));
      expect(names.length).toBeGreaterThanOrEqual(1);
      expect(names.join()).not.toMatch(/good morning|swing|push press|carry|squat|deadlift|shrug/i);
    },
  );

  it('goes back only with the clinician’s word', () => {
    expect(details(texts('back'))).toMatch(/needs the clinician’s word/);
  });

  it('asks what a word covers that it does not know', () => {
    const answer = noAnswer({ ...texts('back'), notAllowed: 'sled drags' });
    expect(answer.reason).toBe('ask-first');
    expect(viewText(answer.view?.())).toContain('sled drags');
  });
});

describe('a hand in a cast', () => {
  const texts = (wanted: string) => ({
    wanted,
    complaints: '',
    company: 'partner',
    handOut: 'right',
    ...own(
      'stack,dumbbell',
      'cable,leg-press-machine,leg-extension-machine,seated-leg-curl-machine,crunch-machine',
    ),
  });

  it('trains legs on machines, asks again at each change, and takes nothing from the other side', () => {
    expect(offered(texts('legs')).join()).toMatch(/leg press/i);
    expect(offered(texts('trunk')).join()).toMatch(/machine crunch|crunch machine/i);
    expect(offered(texts('legs')).join()).not.toMatch(/barbell|goblet/i);
    expect(details(texts('legs'))).toMatch(/Ask the clinician again at each change/);
    expect(details(texts('legs'))).toMatch(/other side trains on as before/);
  });

  it('offers nothing that needs both hands', () => {
    const both = { ...texts('arms'), handOut: 'both' };
    expect(noAnswer(both).reason).toBe('nothing-suitable');
    expect(viewText(noAnswer(both).view?.())).toMatch(/Ask a physiotherapist/);
  });
});

describe('alone and to failure', () => {
  it('leaves a bar above the body out until stops are set', () => {
    const texts = { exercise: 'barbell-bench-press', complaints: '', place: 'full' };
    expect(details(texts)).toMatch(/Alone and to failure it needs stops/);
    const shown = shownResult(exchange, { ...texts, stops: 'yes' });
    expect(shown.headline.label).toMatch(/Nothing given here/);
  });
});

describe('the code', () => {
  it.each([
    { place: 'full' },
    { positions: 'elbow-hard-grip' },
    { ...ease, ...own('dumbbell,band', 'cable,chair') },
    { wanted: 'legs', notAllowed: 'lunges', handOut: 'left' },
  ])('agrees for %o', async (texts) => {
    const shown = shownResult(exchange, texts);
    expect((await runSnippet(shown.snippet)).at(-1)).toEqual([shown.headline.exact]);
  });
});

describe('a squat that the clinician has not allowed', () => {
  it('is named in its lightest forms, to ask about', () => {
    expect(details({ notAllowed: 'squat' })).toContain('sit to stand from a chair');
    expect(details({ notAllowed: 'squat' })).toContain('squat without weight');
  });
});
