import { useEffect, useState } from 'preact/hooks';
import type { Calculator } from '../contract/Calculator.ts';
import { fetchFrame } from '../contract/fetchFrame.ts';
import type { Texts } from '../fields/Field.ts';

/**
 * Whether what stands below the answer of a calculator is there. Where it has to be fetched, that
 * begins after the first look; where it could not be, it is tried again with the next change.
 */
export function useRest({ fetchRest }: Calculator, texts: Texts): 'there' | 'fetching' | 'failed' {
  const [rest, setRest] = useState<'there' | 'fetching' | 'failed'>(
    fetchFrame || fetchRest ? 'fetching' : 'there',
  );
  useEffect(() => {
    if (rest === 'there') return;
    let isWanted = true;
    const tell = (is: 'there' | 'failed') => () => {
      if (isWanted) setRest(is);
    };
    Promise.all([fetchFrame?.(), fetchRest?.()]).then(tell('there'), tell('failed'));
    return () => {
      isWanted = false;
    };
  }, [fetchRest, texts]);
  return rest;
}
