import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Address, decodeAddress } from '../address/decodeAddress.ts';
import { asSearch, encodeAddress } from '../address/encodeAddress.ts';
import type { Answer, NoAnswer, ShownResult } from '../contract/Answer.ts';
import type { Calculator } from '../contract/Calculator.ts';
import type { Texts } from '../fields/Field.ts';
import { words } from '../words.ts';
import type { ServedPart } from './below/handOver.ts';
import { Form } from './Form.tsx';
import { kept } from './kept.ts';
import { More } from './More.tsx';
import { NextLinks } from './NextLinks.tsx';
import { Rest } from './Rest.tsx';
import { ResultHead } from './ResultHead.tsx';
import { usePainted } from './usePainted.ts';
import { useRest } from './useRest.ts';

export interface CalculatorAppProps {
  readonly calculator: Calculator;
  /** Query of an address, for the first state; the defaults without it. */
  readonly query?: string;
  /**
   * The query once the page is alive, where the markup was made without knowing it. Read after
   * the first render, so that served and first rendered markup agree. Another function has it read
   * again: then it takes the place of what was entered.
   */
  readonly liveQuery?: () => string;
  /** The page was served with the answer to `query`: that stays until something else is asked. */
  readonly isServed?: boolean;
  /** Told with the first answer and after every change. */
  readonly onAnswer?: (texts: Texts, answer: Answer) => void;
  /** Told after every change: the query of the state, and what changed; no name where several did. */
  readonly onStateChange?: (query: string, name: string, text: string) => void;
  /**
   * Address of the folder in which every calculator has a folder of its own; `../` when it is left
   * out. `null` where there is none: then nothing links to another calculator.
   */
  readonly tools?: string | null;
}

/** A whole calculator: result, inputs, reasons. The texts in its fields are all the state it has. */
export function CalculatorApp(props: CalculatorAppProps) {
  const { calculator, query = '', liveQuery, isServed } = props;
  const { onStateChange, onAnswer, tools = '../' } = props;
  const [state, setState] = useState<Address>(() => decodeAddress(calculator, query));
  const texts = usePainted(state.texts);
  const ownQuery = encodeAddress(calculator, texts, state.others);
  const servedQuery = useRef(liveQuery ? ownQuery : null);
  useEffect(() => {
    if (!liveQuery) return;
    const live = decodeAddress(calculator, liveQuery());
    if (JSON.stringify(live) !== JSON.stringify(state)) setState(live);
  }, [calculator, liveQuery]);

  const rest = useRest(calculator, state.texts);
  const isChanged = useRef(false);
  if (servedQuery.current !== ownQuery) isChanged.current = true;
  const [isUsed, setUsed] = useState(false);
  const served = useRef<ServedPart | null>(null);
  const isAnswerKept = isServed && !isUsed && !isChanged.current;
  const answer = useMemo(
    () => (isAnswerKept ? null : calculator.answer(texts)),
    [calculator, texts, rest, isAnswerKept],
  );
  useEffect(() => {
    if (answer) onAnswer?.(texts, answer);
  }, [texts]);
  const lastGood = useRef<ShownResult | NoAnswer | null>(null);
  const isOld = answer?.kind === 'unreadable';
  if (answer && !isOld) lastGood.current = answer;
  const fallback = () => calculator.answer(calculator.defaults) as ShownResult;
  const shown = isAnswerKept ? null : (lastGood.current ?? fallback());

  const change = (texts: Texts, name = '', text = '') => {
    setState({ ...state, texts });
    onStateChange?.(encodeAddress(calculator, texts, state.others), name, text);
  };
  const setText = (name: string, text: string) =>
    change({ ...state.texts, [name]: text }, name, text);
  const next = (
    <NextLinks
      links={shown?.next ?? []}
      tools={tools}
      own={calculator.id}
      onTake={(carry) => change({ ...calculator.defaults, ...carry })}
    />
  );
  return (
    <div class="wl">
      <div class="wl-sheet">
        <div class="wl-work">
          <ResultHead shown={isServed && !isChanged.current ? null : shown} isOld={isOld} />
          <div class="wl-picture" data-of={calculator.id} {...(shown === null && kept)}>
            {shown && (shown.view?.() ?? <p class="wl-soft">{words.result.noView}</p>)}
            {shown?.kind === 'none' && next}
          </div>
          <Form
            calculator={calculator}
            texts={state.texts}
            problems={isOld ? answer.problems : {}}
            onText={setText}
          />
        </div>
        {rest === 'there' && shown ? (
          <More
            served={served.current}
            shown={shown}
            others={state.others}
            tools={tools}
            next={shown.kind === 'result' && next}
            ownLink={`${calculator.id}/${asSearch(ownQuery)}`}
          />
        ) : (
          <Rest
            is={rest}
            isServed={servedQuery.current === ownQuery}
            onServed={(part) => {
              served.current = part;
              setUsed(part.pressed !== null);
            }}
          />
        )}
      </div>
    </div>
  );
}
