// What the sheet follows: the design of `lamplane view`, or one plane of its class, as the address asks.

import { type AddressState, followedName, isBenchAddress, isClassAddress, parseAddress } from "../state/address.ts";
import { createClassClient } from "../state/class-client.ts";
import { isServedClass } from "../state/served-class.ts";
import { type FollowedFile, type FollowHandlers, followFile } from "./followed-file.ts";
import { followPlane } from "./followed-plane.ts";

/** @returns undefined on a page that follows nothing */
export function followOrigin(address: AddressState, handlers: FollowHandlers): FollowedFile | undefined {
  const plane = isServedClass() ? followedName(address) : undefined;
  return plane === undefined ? followFile(handlers) : followPlane(plane, handlers, createClassClient());
}

/** Whether an address asks for another screen, or for another plane of the class than is followed. */
export function leavesSheet(hash: string, followed: FollowedFile | undefined): boolean {
  if (isBenchAddress(hash) || isClassAddress(hash)) return true;
  const plane = followedName(parseAddress(hash));
  return isServedClass() && plane !== undefined && plane !== followed?.name;
}
