import type { ReachableLoad, StepUp } from '@windlass/core/equipment';
import { supportedBodyWeight } from '@windlass/core/exchange';
import { loadFromValue, subtractLoad, toKg } from '@windlass/core/load';
import { loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { percentWords } from './certaintyOf.ts';
import type { Chosen, GymResult } from './compute.ts';
import { PUSH_UPS } from './equipmentOf.ts';
import type { GymInput } from './fields.ts';
import { countedAs } from './headlineOf.ts';
import { ORDINARY } from './loadJumps.ts';
import { madeOf } from './madeOf.ts';
import { numberWords } from './numberWords.ts';
import { runsWords } from './runsWords.ts';
import { said } from './words.ts';

interface GymDetailsProps {
  readonly input: GymInput;
  readonly result: GymResult;
}

/** More rows than this no one reads down. */
const MOST_ROWS = 40;
const BESIDE = 8;
const MOST_RUNS = 60;

/** The loads with their steps, the way over a large step, and what the numbers leave out. */
export function GymDetails({ input, result }: GymDetailsProps) {
  const { list, chosen } = result;
  const runs = runsWords(list.loads, input.show, MOST_RUNS);
  const notes = notesOf(input, result);
  return (
    <>
      {chosen?.up?.kind === 'step' && <StepPanel input={input} chosen={chosen} up={chosen.up} />}
      <LoadTable input={input} result={result} />
      {runs && (
        <section class="wl-panel">
          <h2 class="wl-heading">{said.all}</h2>
          <p>{runs}</p>
        </section>
      )}
      {notes.length > 0 && (
        <section class="wl-panel">
          <h2 class="wl-heading">{said.notes}</h2>
          <ul class="wl-sources">
            {notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

interface StepPanelProps {
  readonly input: GymInput;
  readonly chosen: Chosen;
  readonly up: Extract<StepUp, { kind: 'step' }>;
}

function StepPanel({ input, chosen, up }: StepPanelProps) {
  const name = (load: ReachableLoad) => numberWords(load, input.show);
  const isBeyond = up.size === 'beyond-repetitions';
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.bridge(name(chosen.load), name(up.to))}</h2>
      {chosen.reps && <p>{repsSentence(input, chosen, up)}</p>}
      {up.bridges.length > 0 && (
        <>
          <p>{isBeyond ? said.beyond : said.bridgeFirst}</p>
          <ul class="wl-sources">
            {up.bridges.map(({ id, message, addsAtMost }) => (
              <li key={id}>
                {message} {addsAtMost ? said.addsAtMost(loadWords(addsAtMost, input.show)) : ''}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** Counts above this say little about strength. */
const MOST_REPS = 20;

function repsSentence(
  { goal, show }: GymInput,
  { load, reps }: Chosen,
  { to }: StepPanelProps['up'],
) {
  if (!reps) return '';
  const [low, high] = [reps.low, reps.high].map((count) => formatNumber(count, 0));
  const sentence = said.reps(
    low ?? '',
    high ?? '',
    numberWords(load, show),
    goal,
    numberWords(to, show),
  );
  return reps.high > MOST_REPS ? `${sentence} ${said.tooMany}` : sentence;
}

function LoadTable({ input, result }: GymDetailsProps) {
  const { loads } = result.list;
  const hasTwo = countedAs(input, result) !== null;
  const rows = rowsOf(result);
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.around}</h2>
      <table class="wl-table">
        <thead>
          <tr>
            <th scope="col">{hasTwo ? said.columns.number : said.columns.load}</th>
            {hasTwo && (
              <th scope="col" class="wl-figure">
                {said.columns.moved}
              </th>
            )}
            <th scope="col" class="wl-figure">
              {said.columns.step}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((place) => (
            <LoadRow key={place} place={place} hasTwo={hasTwo} input={input} result={result} />
          ))}
        </tbody>
      </table>
      {rows.length < loads.length && (
        <p class="wl-soft">{said.shownOf(rows.length, loads.length)}</p>
      )}
    </section>
  );
}

function rowsOf({ list: { loads }, chosen }: GymResult): readonly number[] {
  const places = loads.map((_, place) => place);
  if (loads.length <= MOST_ROWS) return places;
  const middle = chosen?.place ?? 0;
  return places.slice(Math.max(0, middle - BESIDE), middle + BESIDE + 1);
}

interface LoadRowProps extends GymDetailsProps {
  readonly place: number;
  readonly hasTwo: boolean;
}

function LoadRow({ place, hasTwo, input, result }: LoadRowProps) {
  const { list, chosen } = result;
  const one = list.loads[place];
  const before = list.loads[place - 1];
  if (!one) return null;
  const percent = before && before.load > 0 ? (100 * (one.load - before.load)) / before.load : null;
  const number = numberWords(one, input.show);
  const made = madeOf(input, one);
  return (
    <tr data-chosen={chosen?.place === place ? 'true' : undefined}>
      <th scope="row">
        {number}
        <span class="wl-row-note">{made === number ? '' : made}</span>
      </th>
      {hasTwo && <td class="wl-figure">{loadWords(one.load, input.show)}</td>}
      <td class="wl-figure">
        {before && loadWords(subtractLoad(one.load, before.load), input.show)}
        <span class="wl-row-note">
          {percent !== null && percentWords(percent)}
          {percent !== null && percent > ORDINARY && `, ${said.bridgeIt}`}
        </span>
      </td>
    </tr>
  );
}

function notesOf({ gear, moves, bodyWeight }: GymInput, { list }: GymResult): readonly string[] {
  const messages = list.notes.map(({ message }) => message);
  if (gear !== 'body' || moves === 'all') return messages;
  const carried = supportedBodyWeight(PUSH_UPS[moves], toKg(loadFromValue(bodyWeight)));
  return [...messages, ...carried.notes];
}
