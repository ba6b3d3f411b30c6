// What the router does not cut of a plane and what lies on no sheet, for reports: as rows for a terminal and as data.

import { asBuiltPlane } from "@lamplane/bench";
import { NESTED } from "@lamplane/export/words";
import type { Design } from "@lamplane/parameters/table";
import { ROUTER } from "./words/router.ts";

export interface RouterReport {
  readonly programs: number;
  readonly notCut: readonly {
    readonly code: string;
    readonly setUp: string;
    readonly title: string;
    readonly value: number;
    readonly limit: number;
    readonly unit: "mm";
    readonly text: string;
  }[];
}

/** Undefined without a router and cutters, for which nothing is loaded either. */
export async function routerReport(design: Design): Promise<RouterReport | undefined> {
  if (design.cutters.length === 0) return undefined;
  const { limitCode, limitText, planePrograms } = await import("@lamplane/export/router");
  const planned = planePrograms(asBuiltPlane(design));
  if (!planned) return undefined;
  const notCut = planned.limits.map((limit) => ({
    code: limitCode(limit.code),
    setUp: limit.setUp,
    title: limit.title,
    value: limit.value,
    limit: limit.limit,
    unit: "mm" as const,
    text: limitText(limit, design),
  }));
  return { programs: planned.programs.length, notCut };
}

/** Each part that has no program with its reason below it; one line where the router cuts all. */
export function routerText({ programs, notCut }: RouterReport): string {
  if (notCut.length === 0) return `${ROUTER.cutsAll({ programs })}\n`;
  const rows = notCut.flatMap(({ title, text, code }) => [`  ${title}  (${code})`, `      ${text}`]);
  return `${[ROUTER.notCut({ programs, count: notCut.length }), ...rows].join("\n")}\n`;
}

export interface NestedReport {
  readonly sheets: readonly { readonly name: string; readonly parts: readonly string[] }[];
  /** Parts without a place, and sheets without a program. */
  readonly noPlace: readonly { readonly part: string; readonly code: string; readonly text: string }[];
}

/** Undefined where the shop names no sheet that anything could be cut from. */
export async function nestedReport(design: Design): Promise<NestedReport | undefined> {
  if (design.sheets.length === 0) return undefined;
  const { notNested, sheetPrograms } = await import("@lamplane/export/nested");
  const planned = sheetPrograms(asBuiltPlane(design));
  return (
    planned && {
      sheets: planned.sheets.map(({ sheet: { piece, items } }) => ({
        name: piece.name,
        parts: items.map(({ item }) => item.name),
      })),
      noPlace: notNested(planned, design).map(({ what, code, text }) => ({ part: what, code, text })),
    }
  );
}

/** Each part that lies on no sheet with its reason below it. */
export function nestedText({ sheets, noPlace }: NestedReport): string {
  const counts = { sheets: sheets.length, left: noPlace.length };
  const rows = noPlace.flatMap(({ part, text, code }) => [`  ${part}  (${code})`, `      ${text}`]);
  return `${[NESTED.laidOut(counts), ...rows].join("\n")}\n`;
}
