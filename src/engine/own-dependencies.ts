/** A cell, a formula or a range inside the engine, numbered once it is part of its graph. */
interface Vertex {
  readonly idInGraph?: number | undefined;
}
/** Where a vertex lies, and itself. */
type Dependency = readonly [at: { readonly sheet: number } | undefined, vertex: Vertex];

interface Graph {
  /** By the numbers of the vertices, the numbers of all that follow from each; what was taken out has left a gap. */
  readonly edgesSparseArray: number[][];
  addEdge(from: Vertex | number, to: Vertex | number): void;
  removeNode(vertex: Vertex): Iterable<Dependency>;
  hasNode(vertex: Vertex): boolean;
  adjacentNodesCount(vertex: Vertex): number;
}

/** The part of the engine that knows what depends on what, as the rest of it asks it. */
interface Dependencies {
  /** Takes a formula out, with all ranges and empty cells that were there for it alone. */
  removeVertexAndCleanupDependencies(vertex: Vertex): void;
  cleanupPlaceholderSheets(sheets: ReadonlySet<number>): void;
  readonly graph: Graph;
  readonly rangeMapping: { removeVertexIfExists(vertex: Vertex): void };
  readonly addressMapping: { removeCell(at: object): void };
}

const needed = [
  'removeVertexAndCleanupDependencies',
  'cleanupPlaceholderSheets',
  'graph',
  'rangeMapping',
  'addressMapping',
] as const;

/** Lets the engine take formulas in and out in a time that grows with the cells of their ranges and with the formulas that follow a cell. In
 *  its own way it grows with the square of either, and a hundred thousand of them take half a minute. */
export function followLinearly(engine: object): void {
  const { _dependencyGraph: held } = engine as { readonly _dependencyGraph?: Dependencies };
  if (!held || needed.some((name) => !held[name]) || !held.graph.addEdge)
    throw new Error(
      'This version of the calculation engine follows dependencies in a way of its own, and ours finds no place.',
    );
  held.removeVertexAndCleanupDependencies = clearing(held);
  held.graph.addEdge = linking(held.graph);
}

function clearing(held: Dependencies): (vertex: Vertex) => void {
  const { graph, rangeMapping, addressMapping } = held;
  return (vertex) => {
    const waiting = [...graph.removeNode(vertex)];
    const sheets = new Set<number>();
    // The list grows while it is gone through.
    for (const [at, each] of waiting) {
      if (!isRange(each) && !isEmptyCell(each)) continue;
      if (!graph.hasNode(each) || graph.adjacentNodesCount(each) > 0) continue;
      for (const next of graph.removeNode(each)) waiting.push(next);
      if (isRange(each)) rangeMapping.removeVertexIfExists(each);
      else if (at) addressMapping.removeCell(at);
      sheets.add(isRange(each) ? each.sheet : (at?.sheet ?? -1));
    }
    held.cleanupPlaceholderSheets(sheets);
  };
}

const isRange = (vertex: Vertex): vertex is Vertex & { readonly sheet: number } => 'bruteForce' in vertex;
const isEmptyCell = (vertex: Vertex): boolean => !('getValues' in vertex || 'getFormula' in vertex);

/** So many edges are looked through for one that may be there already. */
const FEW = 32;

/** New vertices have the highest numbers: what is above all that follow from a vertex is not among them yet. */
function linking({ edgesSparseArray }: Graph): Graph['addEdge'] {
  const highest = new WeakMap<readonly number[], number>();
  const numberOf = (vertex: Vertex | number): number =>
    (typeof vertex === 'number' ? vertex : vertex.idInGraph) ?? unknown();
  return (from, to) => {
    const edges = edgesSparseArray[numberOf(from)] ?? unknown();
    const number = numberOf(to);
    if (edges.length <= FEW) {
      if (!edges.includes(number)) edges.push(number);
      return;
    }
    const most = highest.get(edges) ?? edges.reduce((high, each) => Math.max(high, each), -1);
    if (number <= most && edges.includes(number)) return;
    highest.set(edges, Math.max(most, number));
    edges.push(number);
  };
}

function unknown(): never {
  throw new Error('The calculation engine does not know a cell that a formula depends on.');
}
