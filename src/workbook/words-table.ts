import type { TableDefinition } from "./table-definition";

/** The farm's own words for lesions, to be seen and changed in the workbook. */
export const wordsTable = {
  name: "Words",
  about: "One row for each word that the farm uses for a lesion, and the code that it stands for.",
  columns: [
    { key: "word", heading: "Word", holds: "text", about: "As the farm writes it; capitals do not matter.", required: true }, // oxfmt-ignore
    {
      key: "code",
      heading: "Code",
      holds: "lesion",
      about: "Code of the claw disorder key; none for a sound foot; blank while nobody has said.",
    },
    { key: "name", heading: "Name", holds: "text", about: "What the code stands for." },
    { key: "note", heading: "Note", holds: "text", about: "Why this code, or what else it may mean." },
  ],
} as const satisfies TableDefinition;
