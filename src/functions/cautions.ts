/** Cautions that several functions share. */
export const VETERINARIAN =
  "A reminder, not a prescription: diagnosis and treatment belong to a licensed veterinarian. A cow that bears no weight, or with a deep or swollen foot, needs one today.";
export const AS_PRESCRIBED = "Drugs only as prescribed and as the label says; keep to the milk and meat withdrawal.";
export const TRAINED_TRIMMER =
  "Trimming is for trained people: stop when the sole yields or shows pink; a claw at or below its length is not cut.";
