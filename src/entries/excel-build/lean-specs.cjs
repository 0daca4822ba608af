const ts = require("typescript");

/**
 * A loader for the script of worksheet functions, which Excel must load before the first function answers: it takes
 * out of a spec what is read and never computed with. The pane and the functions that tell of others have whole specs.
 */
module.exports = function leanSpecs(source) {
  const file = ts.createSourceFile("spec.ts", source, ts.ScriptTarget.Latest, true);
  const cuts = [];
  const cut = (node, text) => cuts.push({ start: node.getStart(file), end: node.end, text });
  const visit = (node) => {
    const callee = ts.isCallExpression(node) ? node.expression.getText(file) : "";
    for (const index of TEXT_ARGUMENTS[callee] ?? []) cut(node.arguments[index], '""');
    for (const member of callee === "defineFunction" ? membersOf(node.arguments[0]) : []) {
      const name = member.name?.getText(file);
      if (name in LEAN_MEMBERS) cut(member, `${name}: ${LEAN_MEMBERS[name]}`);
      else visit(member);
    }
    if (callee !== "defineFunction") ts.forEachChild(node, visit);
  };
  visit(file);
  return cuts.reduceRight((text, { start, end, text: lean }) => text.slice(0, start) + lean + text.slice(end), source);
};

/** What stands in a spec instead of what only readers need. */
const LEAN_MEMBERS = {
  summary: '""',
  group: '""',
  sources: "[]",
  limits: "[]",
  cautions: "[]",
  examples: "[]",
  steps: "() => []",
};

/** Where the makers of parameters take a description, and those of pairs of specs worked examples. */
const TEXT_ARGUMENTS = { required: [1], optional: [1, 2], withDefault: [1, 3], rateLimit: [1], shareLimit: [1] };

function membersOf(definition) {
  return ts.isObjectLiteralExpression(definition) ? definition.properties : [];
}
