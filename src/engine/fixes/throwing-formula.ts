import {
  AstRootNodeFactory,
  AstTreeBuilder,
  DEFAULT_TOKEN_TYPE_ROOT,
  ErrorType,
  ErrorValueObject,
  Interpreter,
  Lexer,
  LexerNode,
} from "@univerjs/engine-formula";

/**
 * An exception in one formula, while it is parsed or computed, ended the calculation of the whole workbook for good.
 * It becomes the error of that formula.
 */
export function fixThrowingFormula(): void {
  const interpreter = Interpreter.prototype;
  const { execute, executeAsync } = interpreter;
  interpreter.execute = function (...parameters) {
    try {
      return execute.apply(this, parameters);
    } catch {
      return ErrorValueObject.create(ErrorType.VALUE);
    }
  };
  interpreter.executeAsync = async function (...parameters) {
    try {
      return await executeAsync.apply(this, parameters);
    } catch {
      return ErrorValueObject.create(ErrorType.VALUE);
    }
  };
  const builder = AstTreeBuilder.prototype;
  const { parse } = builder;
  builder.parse = function (tree) {
    try {
      return parse.call(this, tree);
    } catch {
      return emptyFormula();
    }
  };
  const lexer = Lexer.prototype;
  const { treeBuilder } = lexer;
  lexer.treeBuilder = function (...parameters) {
    try {
      return treeBuilder.apply(this, parameters);
    } catch {
      return ErrorType.VALUE;
    }
  };
}

/** A parsed formula with nothing in it, which the engine computes as #VALUE!. */
function emptyFormula(): ReturnType<AstTreeBuilder["parse"]> {
  const root = new LexerNode();
  root.setToken(DEFAULT_TOKEN_TYPE_ROOT);
  return new AstRootNodeFactory().checkAndCreateNodeType(root) as ReturnType<AstTreeBuilder["parse"]>;
}
