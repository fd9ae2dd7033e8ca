import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { words } from './words.ts';

/**
 * A part of the page whose code is fetched when it is first shown. Where the network fails it says
 * so, and tries again the next time it is shown.
 */
export function later<Props>(fetchPart: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  let Part: ComponentType<Props> | undefined;
  return function Later(props: Props) {
    const [state, setState] = useState<'fetching' | 'there' | 'failed'>(
      Part ? 'there' : 'fetching',
    );
    useEffect(() => {
      if (Part) return;
      fetchPart().then(
        (fetched) => {
          Part = fetched;
          setState('there');
        },
        () => setState('failed'),
      );
    }, []);
    if (Part) return <Part {...(props as Props & object)} />;
    return state === 'failed' ? <p class="soft">{words.fetchFailed}</p> : null;
  };
}
