import {
  FormulaCurrentConfigService,
  FunctionService,
  Lexer,
  ReferenceNodeFactory,
  SuperTableService,
} from "@univerjs/engine-formula";
import type { LexerInternals, ReferenceNodeFactoryInternals } from "../internals";
import { TableIndex } from "../tables";
import { engineFormula, type Surroundings } from "../translate";

/** The tables of all open workbooks. */
export const tableIndex = new TableIndex();

/**
 * The engine reads a table reference only where the names are plain words, finds the headings only where the table
 * begins in row 1, knows neither A1# nor most uses of @, and keeps what it read after the table has grown. Here each
 * formula is put into addresses and calls before it is parsed, and parsed anew when a table changes.
 */
export function fixTableReferences(): void {
  watchTables();
  keepParsedFormulas();
  translateFormulas();
  handOutAliases();
}

function watchTables(): void {
  const prototype = SuperTableService.prototype;
  const register = prototype.registerTable;
  prototype.registerTable = function (unitId, name, reference): void {
    const columns = [...reference.titleMap].sort(([, a], [, b]) => a - b).map(([column]) => column);
    tableIndex.set(unitId, { name, sheetId: reference.sheetId, range: reference.range, columns });
    forgetParsedFormulas();
    register.call(this, unitId, name, reference);
  };
  const remove = prototype.remove;
  prototype.remove = function (unitId, name): void {
    tableIndex.remove(unitId, name);
    forgetParsedFormulas();
    remove.call(this, unitId, name);
  };
}

/** Every kept formula has a key that contains the empty text. The method needs no service. */
function forgetParsedFormulas(): void {
  FunctionService.prototype.deleteFormulaAstCacheKey.call(undefined as never, "");
}

/**
 * While a table is new or changed the engine keeps no parsed formula that names it: the same formula in a thousand rows
 * is parsed thousands of times. They are forgotten when a table changes, which is enough.
 */
function keepParsedFormulas(): void {
  FormulaCurrentConfigService.prototype.getDirtySuperTableMap = () => ({});
}

function translateFormulas(): void {
  const prototype = Lexer.prototype as unknown as LexerInternals & Pick<Lexer, "treeBuilder">;
  prototype.treeBuilder = function (this: LexerInternals, formula, transformSuffix = true) {
    const { _definedNamesService: names, _formulaCurrentConfigService: config } = this;
    const unitId = config.getExecuteUnitId();
    const surroundings: Surroundings = {
      table: (name) => (unitId ? tableIndex.get(unitId, name) : undefined),
      sheetName: (sheetId) => config.getSheetName(unitId ?? "", sheetId),
    };
    const translated = engineFormula(formula, surroundings);
    if (names.getAllDefinedNamesIsEmpty())
      return this._lexerTreeBuilder.treeBuilder(translated, transformSuffix) as never;
    const lookup = {
      unitId,
      getValueByName(unit: string, name: string) {
        const found = names.getValueByName(unit, name);
        return found && { ...found, formulaOrRefString: engineFormula(found.formulaOrRefString, surroundings) };
      },
      getDirtyDefinedNameMap: () => config.getDirtyDefinedNameMap(),
      getSheetName: (unit: string, sheetId: string) => config.getSheetName(unit, sheetId),
    };
    return this._lexerTreeBuilder.treeBuilder(translated, transformSuffix, lookup) as never;
  };
}

/** References to a table's own row reach the parser under the table's alias. */
function handOutAliases(): void {
  const prototype = ReferenceNodeFactory.prototype as unknown as ReferenceNodeFactoryInternals;
  prototype._getTableMap = function (this: ReferenceNodeFactoryInternals) {
    const unitId = this._currentConfigService.getExecuteUnitId();
    return unitId ? tableIndex.byAlias(unitId) : undefined;
  };
}
