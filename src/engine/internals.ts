import type {
  BooleanNumber,
  ICellData,
  IRange,
  IUnitRange,
  IUniverInstanceService,
  Nullable,
  ObjectMatrix,
} from "@univerjs/core";
import type {
  ArrayValueObject,
  BaseValueObject,
  CalculateFormulaService,
  FormulaDependencyTree,
  FormulaRuntimeService,
  IDefinedNamesServiceParam,
  LexerNode,
} from "@univerjs/engine-formula";

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

type Matrix<T> = { readonly [row: number]: { readonly [column: number]: T } };
type BySheet<T> = Nullable<{ readonly [unitId: string]: Nullable<{ readonly [sheetId: string]: T }> }>;

/** Where formulas that fill several cells stand, and what they fill. */
export type SpillRanges = BySheet<Matrix<IRange>>;
export type SpilledCells = BySheet<ObjectMatrix<Nullable<ICellData>>>;

export interface RuntimeInternals {
  _getValueObjectOfRuntimeData(value: Nullable<BaseValueObject>): Nullable<ICellData>;
}

export interface CalculationState {
  readonly arrayFormulaRange: SpillRanges;
  readonly runtimeFeatureRange: object;
}

export interface CalculationInternals {
  readonly _currentConfigService: {
    _forceCalculate: boolean;
    getArrayFormulaRange(): SpillRanges;
    getFormulaData(): BySheet<Matrix<Nullable<{ readonly f?: string }>>>;
    loadDirtyRangesAndExcludedCell(dirtyRanges: readonly IUnitRange[], excludedCells: object): void;
  };
  readonly _runtimeService: {
    getUnitArrayFormula(): SpillRanges;
    getRuntimeArrayFormulaCellData(): SpilledCells;
    getRuntimeClearArrayFormulaCellData(): SpilledCells;
  };
  readonly _formulaDependencyGenerator: {
    readonly _dependencyManagerService: {
      openKdTree(): void;
      closeKdTree(): void;
      searchDependency(ranges: readonly IUnitRange[]): ReadonlySet<number>;
    };
  };
  _apply(isArrayFormulaState?: boolean): Promise<CalculationState | undefined>;
  _executeStep(): Promise<true | undefined>;
  _getArrayFormulaDirtyRangeAndExcludedRange(
    arrayFormulaRange: object,
    runtimeFeatureRange: object,
  ): { readonly dirtyRanges: readonly IUnitRange[] };
}

/** What a run of the formulas is handed: what changed, and the cells. */
export type Changes = Parameters<CalculateFormulaService["execute"]>[0];

export interface RunsOfFormulas {
  readonly executionCompleteListener$: CalculateFormulaService["executionCompleteListener$"];
  readonly _runtimeService: Pick<FormulaRuntimeService, "stopExecution">;
  readonly _executeLock: { acquire(key: string, work: () => unknown): Promise<unknown> };
  execute(changes: Changes): Promise<void>;
}

/** What watches the commands, and asks for a run of the formulas some time after a change. */
export interface TriggerInternals {
  readonly _waitingCommandQueue: readonly unknown[];
  /** How far the run that is on has come; without it, a run is asked for. */
  _executionInProgressParams: object | null;
  /** What a run is asked for with: what the run that is on was, and what changed since. */
  _mergeDirty(executing: object, changed: object): object;
}

/** What a formula reads, as the engine enters it. */
export interface RangeTree {
  readonly treeId: number;
  readonly rangeList: readonly IUnitRange[];
}

export interface DependencyRanges {
  addDependencyRTreeCache(tree: RangeTree): void;
  reset(): void;
  _removeDependencyRTreeCache(treeId: number): void;
  _removeDependencyRTreeCacheById(unitId: string, sheetId: string): void;
}

/** The order in which formulas are computed. */
export interface OrderOfFormulas {
  readonly _dependencyManagerService: {
    searchDependency(ranges: readonly IUnitRange[], except?: ReadonlySet<number>): Set<number>;
  };
  _calculateRunList(trees: readonly unknown[]): unknown[];
  _checkIsCycleDependency(trees: readonly unknown[]): boolean;
}

/** A part of a parsed formula that reads cells. */
export interface ReadNode {
  readonly nodeType: number;
  getChildren(): readonly ReadNode[];
}

export interface RangesOfFormulas {
  readonly _currentConfigService: {
    getUnitData(): Readonly<Record<string, Nullable<Record<string, { rowCount: number; columnCount: number }>>>>;
    getSheetName(unitId: string, sheetId: string): string;
  };
  readonly _runtimeService: Readonly<
    Record<"currentUnitId" | "currentSubUnitId", string> & Record<"currentRow" | "currentColumn", number>
  >;
  _generateTreeList(...parameters: unknown[]): Promise<unknown>;
  _getRangeListByNode(formula: {
    readonly node: object | null;
    readonly refOffsetX: number;
    readonly refOffsetY: number;
  }): Promise<IUnitRange[]>;
  _nodeTraversalRef(node: object, found: ReadNode[]): void;
}

/** Which rows are hidden, by workbook and sheet. */
export interface HiddenRows {
  readonly _univerInstanceService: IUniverInstanceService;
  getHiddenRowsFiltered(): BySheet<{ readonly [row: number]: Nullable<{ readonly hd: BooleanNumber }> }>;
}

export interface ReferenceArrays {
  toArrayValueObject(...options: unknown[]): ArrayValueObject;
}

export interface ResultPositionInternals {
  _currentRow: number;
  _currentColumn: number;
  _batchOperatorValue(...operands: unknown[]): void;
}
