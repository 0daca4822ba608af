/** What is due is listed a week ahead unless asked for more. */
export const DAYS_AHEAD = 7;
