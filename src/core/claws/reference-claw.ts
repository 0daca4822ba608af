export type Claw = "inner" | "outer";
export type Limb = "front" | "hind";

/** The claw that sets the length and the level of a foot: hind the inner, front the outer. Source: Toussaint Raven 1985. */
export function referenceClaw(limb: Limb): Claw {
  return limb === "hind" ? "inner" : "outer";
}

export function otherClaw(claw: Claw): Claw {
  return claw === "inner" ? "outer" : "inner";
}
