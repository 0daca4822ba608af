import type { TableDefinition } from "./table-definition";

/** Which columns of the farm's own are read as which of ours, to be seen and changed in the workbook. */
export const mappingTable = {
  name: "Mapping",
  about: "One row for each of the farm's columns that is read, and what it is read as.",
  columns: [
    { key: "table", heading: "Table", holds: "text", about: "Cows, Findings, Scores or Tests.", required: true },
    { key: "value", heading: "Value", holds: "text", about: "What the column is read as.", required: true },
    { key: "sheet", heading: "Sheet", holds: "text", about: "The sheet on which it stands.", required: true },
    {
      key: "source",
      heading: "Source",
      holds: "text",
      about: "Name of the farm's table; blank where the list is a plain range.",
    },
    {
      key: "heading",
      heading: "Heading",
      holds: "text",
      about: "The farm's heading; blank where one answer holds for all rows.",
    },
    { key: "column", heading: "Column", holds: "text", about: "Its letter when it was last seen." },
    {
      key: "headingRow",
      heading: "Heading row",
      holds: "whole number",
      limits: [1, 1_048_576],
      about: "The row of the headings when it was last seen.",
    },
    {
      key: "unit",
      heading: "Unit",
      holds: "text",
      about: "Unit, scale, order of day and month, or the place that toes are measured from.",
    },
    { key: "note", heading: "Note", holds: "text", about: "Why it was read so." },
  ],
} as const satisfies TableDefinition;
