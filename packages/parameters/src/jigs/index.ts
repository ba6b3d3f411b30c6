// Door: the jigs as figures, outlines and words, without their solids.
export { type CradlePlaces, cradlePlaces } from "./bed-cradle.ts";
export { FIT_TEST_LENGTH, fitTestShank, TRIED } from "./fit-test.ts";
export { gaugeCorners } from "./gauges.ts";
export * from "./jig.ts";
export { jigPlans, jigsLeftOut, overPrinter, printedSize } from "./jigs.ts";
export { type PinGuidePlaces, pinGuidePlaces } from "./pin-guide.ts";
export { type SpacerPlaces, spacerPlaces } from "./spacer-outline.ts";
export { type TemplatePlaces, templateOpening, templatePlaces } from "./template-places.ts";
