// Room for a step's drawing on a screen: as wide as the screen has it, so that its letters keep their size.
import { STEP_ROOM } from "@lamplane/sheets";

const PHONE = 125; // mm: narrower than this the views stand under one another
const TALL = 150; // mm: a phone is scrolled

/** @param width mm */
export const stepRoom = (width: number): typeof STEP_ROOM =>
  width >= STEP_ROOM.width
    ? STEP_ROOM
    : { width, height: width < PHONE ? TALL : (STEP_ROOM.height * width) / STEP_ROOM.width };
