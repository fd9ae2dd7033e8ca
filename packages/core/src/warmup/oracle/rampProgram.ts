import { changeLoading, type ReachableLoad } from '../../equipment/index.ts';
import type { RampProblem } from '../RampChoice.ts';

/** A step of the network: a loading that serves the targets from `first` up to before `end`. */
interface Node {
  readonly way: ReachableLoad;
  readonly first: number;
  readonly end: number;
}

/**
 * The cheapest ramp without a step above the work load, as an integer program on a network in LP
 * format: nodes are loadings with the run of targets they serve, arcs the changes between them, and
 * a growing jump is a variable that two arcs in a row force up.
 */
export function rampProgram(problem: RampProblem): string {
  const { targets, ways, workWays, work, pieceCost, growthCost } = problem;
  const count = targets.length;
  const steps: readonly Node[] = ways.flatMap((way) =>
    targets.flatMap((_, first) =>
      targets.slice(first).map((_, length) => ({ way, first, end: first + length + 1 })),
    ),
  );
  const works: readonly Node[] = workWays.map((way) => ({ way, first: count, end: count + 1 }));
  const nodes = [...steps, ...works];
  const moved = (from: ReachableLoad | undefined, to: ReachableLoad | undefined) =>
    pieceCost * changeLoading(from?.loading ?? 'nothing', to?.loading ?? 'nothing').pieces;
  const offOf = ({ way, first, end }: Node) =>
    targets
      .slice(first, end)
      .reduce((sum, t) => sum + Math.round((1000 * Math.abs(way.load - t)) / work) ** 2, 0);
  const starts = nodes.map((to, index) => ({ index, to })).filter(({ to }) => to.first === 0);
  const arcs = nodes.flatMap((from, a) =>
    nodes.flatMap((to, b) =>
      from.end === to.first && from.way.load < to.way.load ? [{ from, to, a, b }] : [],
    ),
  );
  const cost = [
    ...starts.map(({ index, to }) => `${moved(undefined, to.way) + offOf(to)} s${index}`),
    ...arcs.map(({ from, to, a, b }) => `${moved(from.way, to.way) + offOf(to)} a${a}_${b}`),
    ...works.map(({ way }, w) => `${moved(way, undefined)} e${steps.length + w}`),
  ];
  const rows = [` one: ${starts.map(({ index }) => `s${index}`).join(' + ')} = 1`];
  for (const [index] of nodes.entries()) {
    const into = [
      ...starts.filter((start) => start.index === index).map(() => `s${index}`),
      ...arcs.filter(({ b }) => b === index).map(({ a, b }) => `a${a}_${b}`),
    ];
    const out = [
      ...arcs.filter(({ a }) => a === index).map(({ a, b }) => `a${a}_${b}`),
      ...(index >= steps.length ? [`e${index}`] : []),
    ];
    if (into.length + out.length > 0) {
      rows.push(
        ` n${index}: ${[...into.map((x) => `+ ${x}`), ...out.map((x) => `- ${x}`)].join(' ')} = 0`,
      );
    }
  }
  const growing = arcs.flatMap((one) =>
    arcs.flatMap((two) => {
      const [first, second] = [
        one.to.way.load - one.from.way.load,
        two.to.way.load - two.from.way.load,
      ];
      return one.b === two.a && second > first + 0.01 * work
        ? [{ arcs: `a${one.a}_${one.b} + a${two.a}_${two.b}`, name: `g${one.a}_${one.b}_${two.b}` }]
        : [];
    }),
  );
  for (const { arcs: pair, name } of growing) rows.push(` r${name}: ${pair} - ${name} <= 1`);
  cost.push(...growing.map(({ name }) => `${growthCost} ${name}`));
  const binaries = [
    ...starts.map(({ index }) => `s${index}`),
    ...arcs.map(({ a, b }) => `a${a}_${b}`),
    ...works.map((_, w) => `e${steps.length + w}`),
    ...growing.map(({ name }) => name),
  ];
  return [
    'Minimize',
    ` cost: ${cost.join(' + ')}`,
    'Subject To',
    ...rows,
    'Binary',
    ` ${binaries.join(' ')}`,
    'End',
  ].join('\n');
}
