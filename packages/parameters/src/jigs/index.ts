// Door: the jigs as figures, outlines and words, without their solids.

export { type CradleLayout, cradleLayout } from "./bed-cradle.ts";
export { guidePlay, type JigRoom, printedRoom, SHEET_ROOM } from "./clearance.ts";
export { FIT_TEST_LENGTH, fitTestShank, TRIED } from "./fit-test.ts";
export { gaugeOutlineCorners } from "./gauges.ts";
export * from "./jig.ts";
export { jigForms, jigPlans, omittedJigs, type PrintedSize, printedSize, printerOverhang } from "./jigs.ts";
export { type PinGuideLayout, pinGuideLayout } from "./pin-guide.ts";
export { choosePlate, type PlateChoice, type PlateRange, plateThicknesses, sheetThickness } from "./plate.ts";
export { clearedBy, cornerRelief, reliefOfCutters } from "./relief.ts";
export { type SpacerLayout, spacerLayout } from "./spacer-outline.ts";
export { type TemplateLayout, templateLayout, templateOpening } from "./template-layout.ts";
