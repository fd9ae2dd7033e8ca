import { hydrate } from 'preact';
import { asSearch } from './address/encodeAddress.ts';
import { loadCalculator } from './loadCalculator.ts';
import { CalculatorApp } from './ui/CalculatorApp.tsx';
import { recall, remember } from './ui/remembered.ts';

/**
 * Brings the calculators of a page to life: each element with `data-calculator="id"` whose content
 * is what `renderCalculator` gave. Its `data-tools` is the folder of all calculators (`../` without
 * it). Each fetches only its own calculator. Where there is one alone, its state is read from and
 * kept in the address.
 */
export async function hydrateCalculators(root: ParentNode = document): Promise<void> {
  const places = [...root.querySelectorAll<HTMLElement>('[data-calculator]')];
  const isAlone = places.length === 1;
  await Promise.all(places.map((place) => hydrateOne(place, isAlone)));
}

async function hydrateOne(place: HTMLElement, isAlone: boolean): Promise<void> {
  const calculator = await loadCalculator(place.dataset.calculator ?? '');
  if (!calculator) return;
  const liveQuery = () => recall(calculator, isAlone ? location.search : '', localStorage);
  const keep = (query: string, name: string, text: string) => {
    remember(calculator, name, text, localStorage);
    if (!isAlone) return;
    const { pathname, hash } = location;
    history.replaceState(history.state, '', `${pathname}${asSearch(query)}${hash}`);
  };
  // A picture that is pressed itself, and what comes with the script alone, has to be alive at once.
  const wakes = place.querySelector('.wl-picture button, [data-wakes]');
  hydrate(
    <CalculatorApp
      calculator={calculator}
      liveQuery={liveQuery}
      isServed={place.hasChildNodes() && !wakes}
      onStateChange={keep}
      tools={place.dataset.tools ?? '../'}
    />,
    place,
  );
}
