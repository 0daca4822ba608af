import type { IUnitRange, Nullable } from "@univerjs/core";
import type { FormulaDependencyTree, IDefinedNamesServiceParam, LexerNode } from "@univerjs/engine-formula";

/**
 * The private parts of the engine (@univerjs/engine-formula 0.25.1) that its fixes reach into. They may change with any
 * release: the version is pinned, and each fix has a test that fails without it.
 */
export interface NameLookup {
  readonly unitId: Nullable<string>;
  getValueByName(unitId: string, name: string): Nullable<IDefinedNamesServiceParam>;
}

export interface LexerInternals {
  readonly _lexerTreeBuilder: TreeBuilderInternals;
  readonly _definedNamesService: {
    getAllDefinedNamesIsEmpty(): boolean;
    getValueByName(unitId: string, name: string): Nullable<IDefinedNamesServiceParam>;
  };
  readonly _formulaCurrentConfigService: {
    getExecuteUnitId(): Nullable<string>;
    getDirtyDefinedNameMap(): unknown;
    getSheetName(unitId: string, sheetId: string): string;
  };
}

export interface TreeBuilderInternals {
  _squareBracketState: number;
  _tableBracketState: boolean;
  _resetTemp(): void;
  _suffixExpressionHandler(node: LexerNode): boolean;
  treeBuilder(formula: string, transformSuffix?: boolean, names?: NameLookup): LexerNode | string;
}

export interface ReferenceNodeFactoryInternals {
  readonly _currentConfigService: { getExecuteUnitId(): Nullable<string> };
  _getTableMap(): unknown;
}

export interface DependencyGeneratorInternals {
  _createFDtree(
    unitId: string,
    sheetId: string,
    row: number,
    column: number,
    unitData: unknown,
    formulaDataItem: { readonly f: string },
  ): FormulaDependencyTree;
}

export interface DirtyRanges {
  readonly dirtyRanges: IUnitRange[];
  readonly excludedCell: unknown;
}
