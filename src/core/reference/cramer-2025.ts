import type { Source } from "../shared/source";

export const cramer2025: Source = {
  name: "Cramer, Shepley & van de Pol 2025",
  citation:
    "Cramer G, Shepley E, van de Pol S 2025. Mid-lactation hoof trimming of multiparous cows without hoof lesions. Research summary, annual conference of the American Association of Bovine Practitioners: trimming round dry-off is the commonest routine, many farms add one in mid lactation; cows were enrolled at 117 ± 2 days in milk.",
  standing: "read",
};

/** Days in milk at which the trial gave the trim in mid lactation. */
export const MID_LACTATION_DAYS_IN_MILK = 117;
