// A script of its own, fetched when a roster is opened: it holds the class screen.
import { startOffline } from "../offline/offline.ts";
import { ClassPage } from "./class-page.ts";
import "./open-class.ts";

globalThis.startClass = (page) => {
  void startOffline();
  return new ClassPage(page).begin();
};
