// A script of its own, fetched when a plane is shared: it holds what makes codes and cards.
import { openShareDialog } from "./share-dialog.ts";
import "./share-source.ts";

globalThis.openShare = openShareDialog;
