import type { TableDefinition } from "./table-definition";

/** Name of the one cell that holds the day on which the workbook is looked at. */
export const AS_OF = "AsOf";

/** Feet as the tables write them: left or right, front or hind. */
export const FEET = ["LF", "RF", "LH", "RH"] as const;
export const CLAWS = ["inner", "outer"] as const;
/** Stages of digital dermatitis, as Döpfer et al. 1997 and Berry et al. 2012 number them. */
export const STAGES = ["M1", "M2", "M3", "M4", "M4.1"] as const;
/** Where a toe length was measured from; the two are not comparable. */
export const LANDMARKS = ["hard horn", "skin-horn line"] as const;
/** The treatments that the sheet offers; other text is taken too. */
export const TREATMENTS = [
  "trim",
  "trim, block",
  "trim, block, pain relief",
  "topical",
  "topical, bandage",
  "topical, pain relief",
  "vet called",
] as const;
/** How a foot was found when it was looked at again; gone where the cow left before. */
export const OUTCOMES = ["healed", "better", "same", "worse", "gone"] as const;
/** The part of the herd that a cow stands with. */
export const GROUPS = ["fresh", "high", "low", "dry"] as const;
/** The 0-3 mobility scale; 2 and 3 are lame. */
export const MOBILITY_SCORES = [0, 1, 2, 3] as const;

/** Farms number the claw map from 0 (between the claws) to 12. */
export const ZONES = [0, 12] as const;
/** A claw shorter or longer than this was mistyped, or measured in another unit. */
export const TOE_MM = [30, 200] as const;
/** No cow calves more often than this. */
const LACTATIONS = [1, 20] as const;
/** A lactation that lasts longer has a calving missing. */
export const DAYS_IN_MILK = [0, 1500] as const;
/** Beyond what a cow gives in a day. */
const MILK_KG = [0, 120] as const;
/** Laboratories cap at 9,999 thousand. */
const COUNT_THOUSAND = [1, 9999] as const;

export const cowsTable = {
  name: "Cows",
  about: "One row a cow, with the lactation she is in or was in when she left.",
  columns: [
    { key: "cow", heading: "Cow", holds: "cow", about: "Her number or name; the same in every table.", required: true },
    { key: "born", heading: "Born", holds: "day", about: "Her day of birth." },
    {
      key: "lactation",
      heading: "Lactation",
      holds: "whole number",
      limits: LACTATIONS,
      about: "1 after the first calving.",
    },
    { key: "calved", heading: "Calved", holds: "day", about: "Her latest calving." },
    { key: "dryOff", heading: "Dry-off", holds: "day", about: "The day she was dried off, or is planned to be." },
    {
      key: "entered",
      heading: "Entered",
      holds: "day",
      about: "The day she joined the herd: first calving, or bought.",
      required: true,
    },
    { key: "left", heading: "Left", holds: "day", about: "The day she left the herd; blank while she is here." },
    { key: "group", heading: "Group", holds: "choice", choices: GROUPS, about: "Where she stands now." },
    {
      key: "daysInMilk",
      heading: "Days in milk",
      holds: "whole number",
      about: "Days since calving on the as-of day; blank when dry or gone.",
      formula: `IF(OR([@Left]<>"",[@Group]="dry",[@Calved]=""),"",${AS_OF}-[@Calved])`,
    },
    {
      key: "lastTrim",
      heading: "Last trim",
      holds: "day",
      about: "The latest day on which she stands under Findings.",
      formula: `IF(COUNTIFS(Findings[Cow],[@Cow])=0,"",MAXIFS(Findings[Date],Findings[Cow],[@Cow]))`,
    },
    {
      key: "nextTrim",
      heading: "Next trim",
      holds: "day",
      about: "Her next routine trim by the trimming days under Rules; blank once she has left.",
      formula: `IF([@Left]<>"","",IFNA(HERD.TRIM.NEXT([@[Last trim]],[@Calved],[@[Dry-off]],TrimRules[#All]),""))`,
    },
  ],
} as const satisfies TableDefinition;

export const findingsTable = {
  name: "Findings",
  about: 'One row for each thing found on a foot, and one row with the lesion "none" for each cow found sound.',
  columns: [
    { key: "date", heading: "Date", holds: "day", about: "The day the foot was lifted.", required: true },
    { key: "cow", heading: "Cow", holds: "cow", about: "Her number as under Cows.", required: true },
    {
      key: "lactation",
      heading: "Lactation",
      holds: "whole number",
      limits: LACTATIONS,
      about: "Her lactation on that day.",
    },
    {
      key: "daysInMilk",
      heading: "Days in milk",
      holds: "whole number",
      limits: DAYS_IN_MILK,
      about: "On that day; blank when dry.",
    },
    {
      key: "foot",
      heading: "Foot",
      holds: "choice",
      choices: FEET,
      about: "L or R for left or right, F or H for front or hind.",
    },
    { key: "claw", heading: "Claw", holds: "choice", choices: CLAWS, about: "Blank for the skin between the claws." },
    {
      key: "zone",
      heading: "Zone",
      holds: "whole number",
      limits: ZONES,
      about: "Zone of the claw map: 0 between the claws, 1-3 white line, 4 ulcer site, 10 heel.",
    },
    {
      key: "lesion",
      heading: "Lesion",
      holds: "lesion",
      about: "Code of the claw disorder key; none for a sound cow.",
      required: true,
    },
    { key: "stage", heading: "Stage", holds: "choice", choices: STAGES, about: "Stage of digital dermatitis only." },
    {
      key: "severity",
      heading: "Severity",
      holds: "whole number",
      limits: [1, 3],
      about: "1 mild, 2 plain, 3 severe.",
    },
    {
      key: "toeMm",
      heading: "Toe mm",
      holds: "number",
      unit: "mm",
      limits: TOE_MM,
      about: "Toe length before trimming.",
    },
    {
      key: "measuredFrom",
      heading: "Measured from",
      holds: "choice",
      choices: LANDMARKS,
      about: "Where the toe length starts: at the hard horn or at the skin.",
    },
    { key: "treatment", heading: "Treatment", holds: "text", choices: TREATMENTS, about: "What was done." },
    {
      key: "seenAgain",
      heading: "Seen again",
      holds: "day",
      about: "The day the foot was last looked at since; what was due up to then is done.",
    },
    {
      key: "outcome",
      heading: "Outcome",
      holds: "choice",
      choices: OUTCOMES,
      about: "How the foot was found then; gone where the cow left before.",
    },
    {
      key: "nextLook",
      heading: "Next look",
      holds: "day",
      about: "The day set then for the next look; it takes the place of the days under Rules.",
    },
    {
      key: "closedOn",
      heading: "Closed on",
      holds: "day",
      about: "The day the foot was looked at again and is finished with; blank while open.",
    },
    { key: "note", heading: "Note", holds: "text", about: "Anything else." },
    {
      key: "group",
      heading: "Kind",
      holds: "text",
      about: "horn, infectious, shape or other.",
      formula: `IF(OR([@Lesion]="",[@Lesion]="none"),"",HERD.LESION.GROUP([@Lesion]))`,
    },
    {
      key: "recheck",
      heading: "Recheck",
      holds: "day",
      about: "The next look where one is set, else the first after treatment by the days under Rules.",
      formula: `IF([@[Next look]]<>"",[@[Next look]],IFNA(HERD.RECHECK.DATE([@Lesion],[@Date],Rules[#All]),""))`,
    },
    {
      key: "status",
      heading: "Status",
      holds: "text",
      about: "Done, overdue, due today or still to come, as of the day on the Start sheet.",
      formula: `IF([@Recheck]="","",HERD.RECHECK.STATUS([@Recheck],[@[Closed on]],${AS_OF}))`,
    },
    {
      key: "blockOff",
      heading: "Block off",
      holds: "day",
      about: "The day to look at a block; only where the treatment names one.",
      formula: `IF(ISNUMBER(SEARCH("block",[@Treatment])),HERD.RECHECK.BLOCKOFF([@Date]),"")`,
    },
    {
      key: "toeAdvice",
      heading: "Toe advice",
      holds: "text",
      about: "Leave, shorten by so many mm, or short: do not cut.",
      formula: `IF([@[Toe mm]]="","",HERD.TOE.CHECK([@[Toe mm]],[@[Measured from]],[@Lactation]))`,
    },
  ],
} as const satisfies TableDefinition;

export const scoresTable = {
  name: "Scores",
  about: "One row for each cow scored walking out of the parlour, on the scale 0-3.",
  columns: [
    { key: "date", heading: "Date", holds: "day", about: "The day of scoring.", required: true },
    { key: "cow", heading: "Cow", holds: "cow", about: "Her number as under Cows.", required: true },
    {
      key: "score",
      heading: "Score",
      holds: "whole number",
      limits: [0, 3],
      about: "0 good, 1 imperfect, 2 lame, 3 severely lame; - where she was not seen.",
    },
  ],
} as const satisfies TableDefinition;

export const testsTable = {
  name: "Tests",
  about: "One row for each cow in each monthly milk test.",
  columns: [
    { key: "date", heading: "Date", holds: "day", about: "The day of the test.", required: true },
    { key: "cow", heading: "Cow", holds: "cow", about: "Her number as under Cows.", required: true },
    {
      key: "lactation",
      heading: "Lactation",
      holds: "whole number",
      limits: LACTATIONS,
      about: "Her lactation on that day.",
    },
    {
      key: "daysInMilk",
      heading: "Days in milk",
      holds: "whole number",
      limits: DAYS_IN_MILK,
      about: "Days since calving on that day.",
    },
    {
      key: "milkKg",
      heading: "Milk kg",
      holds: "number",
      unit: "kg a day",
      limits: MILK_KG,
      about: "Milk of the day.",
    },
    {
      key: "count",
      heading: "Count",
      holds: "number",
      unit: "thousand cells/mL",
      limits: COUNT_THOUSAND,
      about: "Cell count in thousands; blank where there is none.",
    },
    {
      key: "cellScore",
      heading: "Cell score",
      holds: "number",
      about: "The count on the doubling scale: one step up is twice the count.",
      formula: `IF(ISNUMBER([@Count]),HERD.CELL.SCORE([@Count]),"")`,
    },
    {
      key: "lossKg",
      heading: "Loss kg",
      holds: "number",
      unit: "kg a day",
      about: "Milk that goes with the count, a day.",
      formula: `IF(ISNUMBER([@Count]),HERD.CELL.LOSS([@Count],[@Lactation],,,"kg"),"")`,
    },
  ],
} as const satisfies TableDefinition;

export const pricesTable = {
  name: "Prices",
  about: "Prices that the sheets use. Change them to the farm's own.",
  columns: [
    { key: "item", heading: "Item", holds: "text", about: "What is priced.", required: true },
    {
      key: "price",
      heading: "Price",
      holds: "number",
      limits: [0, 1_000_000],
      about: "In the currency beside it.",
      required: true,
    },
    { key: "per", heading: "Per", holds: "text", about: "The unit that the price is for." },
    { key: "currency", heading: "Currency", holds: "text", about: "So that prices are never mixed." },
    { key: "year", heading: "Year", holds: "whole number", limits: [1990, 2100], about: "The year of the price." },
    { key: "note", heading: "Note", holds: "text", about: "Where it comes from." },
  ],
} as const satisfies TableDefinition;
