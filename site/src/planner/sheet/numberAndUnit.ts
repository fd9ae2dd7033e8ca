/** The words of a load taken apart, so that the number can be large and the rest small. */
export interface NumberAndUnit {
  /** `≈` where the number is rounded, else empty. */
  readonly mark: string;
  readonly number: string;
  readonly unit: string;
  /** What it counts: `in total, with the bar`. */
  readonly counts: string;
}

/** Takes `≈ 60.82 kg in total` apart. Words of any other form are all `counts`. */
export function numberAndUnit(words: string): NumberAndUnit {
  const match = /^(≈?)\s*([-−\d.,]+)\s(kg|lb)\s?(.*)$/su.exec(words);
  if (!match) return { mark: '', number: '', unit: '', counts: words };
  const [, mark = '', number = '', unit = '', counts = ''] = match;
  return { mark, number, unit, counts };
}
