import { checkFinding, checkToes } from "./check-finding";
import { checkVisit, type CowAtHand } from "./check-visit";
import type { Problem } from "./problems";
import type { Foot } from "./fields";
import { type Entry, isBlankFinding, type RecordState } from "./state";

/** Everything that is to be said about what was typed. Questions that were answered are left out. */
export function checkEntry(state: RecordState, at: CowAtHand | undefined): readonly Problem[] {
  const { entry } = state;
  const findings = entry.findings.flatMap((finding, place) =>
    isBlankFinding(finding) ? [] : checkFinding(state, at, place),
  );
  const toes = measuredFeet(entry).flatMap((foot) => checkToes(state, foot));
  return [...checkVisit(state, at), ...toes, ...findings].filter(
    ({ question }) => question === undefined || !entry.agreed.includes(question),
  );
}

export function measuredFeet({ toes }: Entry): readonly Foot[] {
  return (Object.keys(toes) as Foot[]).filter((foot) => toes[foot]!.inner !== "" || toes[foot]!.outer !== "");
}

/** What keeps the entry from being saved; undefined where nothing does. */
export function hindrance(problems: readonly Problem[]): Problem | undefined {
  return problems.find(({ kind }) => kind === "stop") ?? problems.find(({ kind }) => kind === "ask");
}
