/** The specs with all their texts, for a script that otherwise holds lean ones. */
export { registry } from "../functions/registry";
