import { cha2010, costsUsd2010 } from "../reference/cha-2010";
import { costsUsd2018, dolecheck2019 } from "../reference/dolecheck-2019";
import { costsGbp2009, willshireBell2009 } from "../reference/willshire-bell-2009";
import type { Source } from "../shared/source";

/** One source's costs a case, in its own currency and year. Sets are never mixed. */
export interface PublishedCosts {
  readonly source: Source;
  readonly currency: string;
  readonly year: number;
  readonly byLesion: Readonly<Record<string, number>>;
}

/** Published costs a case that may fill a farm's table until it knows its own. */
export const publishedCosts: readonly PublishedCosts[] = [
  { source: dolecheck2019, currency: "USD", year: 2018, byLesion: costsUsd2018 },
  { source: cha2010, currency: "USD", year: 2010, byLesion: costsUsd2010 },
  { source: willshireBell2009, currency: "GBP", year: 2009, byLesion: costsGbp2009 },
];
