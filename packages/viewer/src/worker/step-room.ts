// Room for a step's drawing on a screen: as wide as the screen has it, so that its letters keep their size.
import { type PictureRoom, STEP_ROOM } from "@lamplane/sheets";

const PHONE = 125; // mm: narrower than this the views stand under one another, and their names below them
const TALL = 150; // mm: a phone is scrolled

/** @param width mm */
export const stepRoom = (width: number): PictureRoom => {
  if (width >= STEP_ROOM.width) return STEP_ROOM;
  if (width < PHONE) return { width, height: TALL, names: "below" };
  return { width, height: (STEP_ROOM.height * width) / STEP_ROOM.width };
};
