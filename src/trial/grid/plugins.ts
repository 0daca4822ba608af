import type { Ctor, Plugin, PluginCtor, Univer } from "@univerjs/core";
import type { BaseFunction, IFunctionInfo } from "@univerjs/engine-formula";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import {
  UniverSheetsTablePlugin,
  UniverSheetsTablePreset,
  UniverSheetsTableUIPlugin,
} from "@univerjs/preset-sheets-table";
import { CalculationMode } from "@univerjs/sheets-formula";
import { strawTable } from "./table-look";

type Entry = PluginCtor<Plugin> | [PluginCtor<Plugin>, ConstructorParameters<PluginCtor<Plugin>>[0]];

/** The preset of tables takes no options of its own. The tag with the table's name would hide the rows above. */
const TABLE_OPTIONS = new Map<unknown, object>([
  [UniverSheetsTablePlugin, { userThemes: [strawTable] }],
  [UniverSheetsTableUIPlugin, { hideAnchor: true }],
]);

export interface GridFunctions {
  readonly functions: [Ctor<BaseFunction>, string][];
  readonly descriptions: IFunctionInfo[];
}

/** Registers the grid with formulas, tables, list boxes and conditional formats. */
export function registerPlugins(univer: Univer, container: HTMLElement, functions: GridFunctions): void {
  const presets = [
    UniverSheetsCorePreset({
      container,
      // Menus and toolbar are mostly about formats, which the page does not save.
      toolbar: false,
      contextMenu: false,
      footer: { menus: false, sheetBar: true, addSheetButtonConfig: { show: false } },
      formula: {
        function: functions.functions as never,
        description: functions.descriptions,
        initialFormulaComputing: CalculationMode.FORCED,
      },
    }),
    UniverSheetsTablePreset(),
    UniverSheetsConditionalFormattingPreset(),
    // The search box and the editor of rules would take the keyboard away from the cell.
    UniverSheetsDataValidationPreset({ showEditOnDropdown: false, showSearchOnDropdown: false }),
  ];
  for (const entry of presets.flatMap(({ plugins }) => plugins as Entry[])) {
    const [plugin, options] = Array.isArray(entry) ? entry : [entry, TABLE_OPTIONS.get(entry)];
    univer.registerPlugin(plugin, options);
  }
}
