/**
 * The specs with all their texts, also in a bundle that otherwise holds lean ones, which only compute. It is large:
 * what is read is loaded when a reader asks for it.
 */
export { registry as wholeRegistry } from "./registry";
