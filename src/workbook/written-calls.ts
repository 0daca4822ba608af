import {
  type AstExpression,
  type CallExpression,
  isArrayNode,
  isCallNode,
  isLambdaNode,
  isLetNode,
  isUnaryNode,
  isBinaryNode,
  parse,
  tokenize,
} from "@borgar/fx";

/** A place for an argument; null where the formula leaves it empty. */
export type ArgumentNode = AstExpression | null;

/** One call of one of our functions as the formula writes it. */
export interface WrittenCall {
  readonly functionId: string;
  readonly argumentTexts: readonly string[];
  readonly argumentNodes: readonly ArgumentNode[];
  /** Where the call ends in the formula: a call inside another one ends before it. */
  readonly end: number;
}

export interface WrittenCalls {
  /** Outermost first and from left to right. */
  readonly calls: readonly WrittenCall[];
  /** Names that LET and LAMBDA give inside the formula, in lower case: they stand for no name of the workbook. */
  readonly localNames: ReadonlySet<string>;
}

/** The namespace of the add-in and, before it, that of its development build. */
const OUR_FUNCTION = /^HERD\.(?:DEV\.)?(.+)$/i;

/** The calls of our functions in a formula as Excel writes it. Throws on a formula that cannot be read. */
export function writtenCalls(formula: string): WrittenCalls {
  const calls: WrittenCall[] = [];
  const localNames = new Set<string>();
  const walk = (node: ArgumentNode): void => {
    if (isCallNode(node)) {
      const call = ourCall(node, formula);
      if (call !== undefined) calls.push(call);
    }
    for (const name of namesGiven(node)) localNames.add(name.toLowerCase());
    childrenOf(node).forEach(walk);
  };
  walk(parse(tokenize(formula, { withLocation: true })));
  return { calls, localNames };
}

function ourCall(call: CallExpression, formula: string): WrittenCall | undefined {
  const { callee, arguments: nodes } = call;
  const functionId = OUR_FUNCTION.exec(callee.name)?.[1]?.toUpperCase();
  if (functionId === undefined) return undefined;
  const argumentNodes: readonly ArgumentNode[] = nodes;
  const argumentTexts = argumentNodes.map((node) => textOf(node, formula));
  return { functionId, argumentNodes, argumentTexts, end: placeOf(call)[1] };
}

function textOf(node: ArgumentNode, formula: string): string {
  if (node === null) return "";
  const [start, end] = placeOf(node);
  // The parser places a spill reference, A1#, on its mark alone.
  const [firstOperand] = isUnaryNode(node) ? node.arguments : [];
  return formula.slice(firstOperand === undefined ? start : Math.min(start, placeOf(firstOperand)[0]), end);
}

/** The formula is tokenized with places, so that every node has its own. */
function placeOf({ loc = [] }: AstExpression): [start: number, end: number] {
  const [start = 0, end = start] = loc;
  return [start, end];
}

function namesGiven(node: ArgumentNode): string[] {
  if (isLetNode(node)) return node.declarations.map(({ id }) => id.name);
  return isLambdaNode(node) ? node.params.map(({ name }) => name) : [];
}

function childrenOf(node: ArgumentNode): readonly ArgumentNode[] {
  if (isCallNode(node) || isUnaryNode(node) || isBinaryNode(node)) return node.arguments;
  if (isLetNode(node)) return [...node.declarations.map(({ init }) => init), node.body];
  if (isLambdaNode(node)) return [node.body];
  return isArrayNode(node) ? node.elements.flat() : [];
}
