// Door: many planes built at once: numbers that they share, the day at the machines, jigs, and where each build stands.
export { type Obstacle, type PlaneStatus, planeStatus } from "./class-status.ts";
export { type Group, type GroupingOptions, groupPreferences, type Preference, totalDeviation } from "./grouping.ts";
export {
  type MachineSetup,
  machineSetups,
  type PlaneColumn,
  SETUP_KEYS,
  type Setting,
  type SetupKey,
} from "./machine-setups.ts";
export { setupLines } from "./setups-text.ts";
export { type SharedJig, sharedJigs } from "./shared-jigs.ts";
export {
  type ClassSetups,
  fewestCoreWidths,
  MOST_SIDE_PLAY,
  type SharedGroup,
  type SharedKey,
  type SharingPlane,
  type SharingResult,
  shareSetups,
} from "./shared-setups.ts";
export { hurdleText, measuredText, obstacleText, stepText } from "./status-text.ts";
