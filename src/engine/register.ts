import type { Ctor, Injector } from "@univerjs/core";
import {
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  IFormulaRuntimeService,
} from "@univerjs/engine-formula";
import { DomainError } from "../core/shared/domain-error";
import type { FunctionSpec } from "../functions/define";
import { evaluate } from "../functions/evaluate";
import { registry } from "../functions/registry";
import type { CallError, CallLog, CallResult } from "./call-log";
import { forgetMovedCells } from "./moved-cells";
import { engineValue, plainArgument } from "./values";

export const NAMESPACE = "HERD";

/** The worksheet functions as the engine registers them. Every run is written to the log. */
export function herdFunctions(log: CallLog, specs: readonly FunctionSpec[] = registry): [Ctor<BaseFunction>, string][] {
  return specs.map((spec) => {
    const run = (variants: readonly BaseValueObject[]): BaseValueObject => {
      const rawArguments = variants.map(plainArgument);
      const outcome = runSpec(spec, rawArguments);
      log.add({ spec, rawArguments, outcome });
      return "error" in outcome
        ? ErrorValueObject.create(outcome.error as ErrorType)
        : engineValue(outcome.value, spec.result);
    };
    class HerdFunction extends BaseFunction {
      override calculate(...variants: BaseValueObject[]): BaseValueObject {
        return run(variants);
      }
    }
    return [HerdFunction as Ctor<BaseFunction>, `${NAMESPACE}.${spec.id}`];
  });
}

/** Never throws: an exception would end the calculation of the whole workbook. */
function runSpec(spec: FunctionSpec, rawArguments: readonly unknown[]): CallResult | CallError {
  try {
    return evaluate(spec, rawArguments);
  } catch (error) {
    const { message } = error as Error;
    if (error instanceof DomainError) {
      return { error: error.kind === "unavailable" ? ErrorType.NA : ErrorType.VALUE, message };
    }
    return { error: ErrorType.VALUE, message: `${NAMESPACE}.${spec.id} failed on these arguments: ${message}` };
  }
}

/** Tells the log when a cell is done, so that it knows which runs belong to which cell. */
export function attachCallLog(injector: Injector, log: CallLog): void {
  const runtime = injector.get(IFormulaRuntimeService);
  const setCell = runtime.setRuntimeData.bind(runtime);
  runtime.setRuntimeData = (value): void => {
    setCell(value);
    log.cellDone(runtime.currentSubUnitId, runtime.currentRow, runtime.currentColumn);
  };
  const setOther = runtime.setRuntimeOtherData.bind(runtime);
  runtime.setRuntimeOtherData = (...parameters): void => {
    setOther(...parameters);
    log.dropRunning();
  };
  forgetMovedCells(injector, log);
}
