/**
 * The point where a smooth function is smallest, by the downhill simplex of Nelder and Mead (1965),
 * begun afresh from its own answer until that no longer moves.
 */
export function minimize(
  f: (point: readonly number[]) => number,
  start: readonly number[],
  step = 0.2,
): readonly number[] {
  let best = start;
  for (let round = 0; round < 20; round += 1) {
    const next = descend(f, best, step);
    if (f(best) - f(next) < 1e-10) return next;
    best = next;
  }
  return best;
}

interface Vertex {
  readonly point: readonly number[];
  readonly value: number;
}

function descend(
  f: (point: readonly number[]) => number,
  start: readonly number[],
  step: number,
): readonly number[] {
  const vertex = (point: readonly number[]): Vertex => ({ point, value: f(point) });
  let simplex = [start, ...start.map((_, i) => start.map((x, j) => (i === j ? x + step : x)))].map(
    vertex,
  );
  for (let turn = 0; turn < 5000; turn += 1) {
    simplex.sort((a, b) => a.value - b.value);
    const [first] = simplex as [Vertex];
    const last = simplex.at(-1) as Vertex;
    if (last.value - first.value < 1e-12) break;
    const others = simplex.slice(0, -1);
    const centre = start.map((_, i) => mean(others.map(({ point }) => point[i] ?? 0)));
    const along = (by: number) => vertex(centre.map((x, i) => x + by * (x - (last.point[i] ?? 0))));
    const mirrored = along(1);
    const second = others.at(-1) as Vertex;
    const candidates =
      mirrored.value < first.value
        ? [mirrored, along(2)]
        : [mirrored, mirrored.value < last.value ? along(0.5) : along(-0.5)];
    const better = candidates.sort((a, b) => a.value - b.value)[0] as Vertex;
    if (better.value < second.value || better.value < last.value) {
      simplex = [...others, better];
    } else {
      simplex = simplex.map(({ point }) =>
        vertex(point.map((x, i) => ((first.point[i] ?? 0) + x) / 2)),
      );
    }
  }
  return (simplex.sort((a, b) => a.value - b.value)[0] as Vertex).point;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
