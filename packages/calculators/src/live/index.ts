/** What a page is made of that follows sets while they are done. */
export { endAnswers, LiveAsk, signAnswers } from '../past-failure/live/LiveAsk.tsx';
export { LiveMoves } from '../past-failure/live/LiveMoves.tsx';
export { LiveNow } from '../past-failure/live/LiveNow.tsx';
export { live as liveWords } from '../past-failure/live/liveWords.ts';
export type { LiveSetControl, Said } from '../past-failure/live/useLiveSet.ts';
export { longestSeconds } from '../past-failure/longestSeconds.ts';
export { said as chainWords } from '../past-failure/words.ts';
export { changeWords, newPerSide } from '../shared/changeWords.ts';
export { loadingWords } from '../shared/loadingWords.ts';
