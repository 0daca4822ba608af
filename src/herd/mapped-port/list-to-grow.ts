import type { FarmList } from "./farm-list";

/** New rows go into the list with the latest day; where none has days, into the last. */
export function listToGrow(lists: readonly FarmList[]): FarmList {
  const latest = (list: FarmList): number => {
    const place = list.columns.findIndex(({ heading }) => heading === "Date");
    return list.rows.reduce(
      (last, row) => (typeof row[place] === "number" && row[place] > last ? row[place] : last),
      0,
    );
  };
  return lists.reduce((best, list) => (lists.length > 1 && latest(best) > latest(list) ? best : list));
}
