// The page's colours, read from its style sheet so that light and dark are decided in one place.

import { Color } from "three";

export interface Theme {
  background: Color;
  wall: Color;
  floor: Color;
  thing: Color;
  line: Color;
  roomLine: Color;
  selected: Color;
  woods: Color[];
}

export function readTheme(): Theme {
  const style = getComputedStyle(document.documentElement);
  const colour = (name: string) => new Color(style.getPropertyValue(name).trim() || "#888");
  return {
    background: colour("--view-ground"),
    wall: colour("--view-wall"),
    floor: colour("--view-floor"),
    thing: colour("--view-thing"),
    line: colour("--view-line"),
    roomLine: colour("--view-room-line"),
    selected: colour("--view-selected"),
    woods: [1, 2, 3, 4].map((n) => colour(`--view-wood-${n}`)),
  };
}

/** Calls back when the person changes between light and dark. */
export function onThemeChange(changed: () => void): () => void {
  const query = matchMedia("(prefers-color-scheme: dark)");
  query.addEventListener("change", changed);
  return () => query.removeEventListener("change", changed);
}
