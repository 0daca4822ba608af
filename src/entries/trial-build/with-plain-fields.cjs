/** A field of an object set in its constructor by a function that comes with the library, in a line of its own. */
const FIELD = /^(\s*)_defineProperty\(this, "(\w+)", (.*)\);$/gm;

/**
 * The source of the formula engine, which makes an object for each cell that it reads, with plain fields. The library
 * comes with a function that sets each field by its name, for browsers of long ago; that function would take a tenth of
 * the time in which a workbook is opened.
 */
module.exports = function withPlainFields(source) {
  return source.replace(FIELD, "$1this.$2 = $3;");
};
