/** What a host of the grid needs of the engine. Nothing here needs Node. */
export { CallLog, type CallError, type CallResult, type RecordedCall } from "./call-log";
export { functionDescriptions } from "./descriptions";
export { applyFixes } from "./fixes";
export { attachCallLog, herdFunctions } from "./register";
export { sheetId, toSnapshot } from "./snapshot";
