// Everything of the page that runs in the browser.

import { Picks } from "./picks";
import type { Scene } from "./scene";
import { Viewer } from "./viewer";

interface DotNet {
  invokeMethodAsync(method: string, ...args: unknown[]): Promise<unknown>;
}

/** Opens a view in an element; the .NET side hears what is picked. */
export function openViewer(host: HTMLElement, page: DotNet): Viewer | null {
  try {
    return new Viewer(host, (id) => void page.invokeMethodAsync("Picked", id));
  } catch {
    // A browser without WebGL: the drawings and the list show the same.
    host.dataset.view = "none";
    return null;
  }
}

export function show(viewer: Viewer, scene: string): void {
  viewer.show(JSON.parse(scene) as Scene);
}

/** Makes the things in a drawing pickable; the .NET side hears what is picked. */
export function listenForPicks(figure: HTMLElement, page: DotNet): Picks {
  return new Picks(figure, (id) => void page.invokeMethodAsync("Picked", id));
}

/** Ctrl+Z, Ctrl+Shift+Z and Ctrl+Y anywhere on the page, but not in a field that is being typed in. */
export function listenForUndo(page: DotNet): { stop: () => void } {
  const onKey = (event: KeyboardEvent) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || isBeingTyped(event.target)) return;
    const key = event.key.toLowerCase();
    if (key !== "z" && key !== "y") return;
    event.preventDefault();
    void page.invokeMethodAsync(key === "y" || event.shiftKey ? "Redo" : "Undo");
  };
  addEventListener("keydown", onKey);
  return { stop: () => removeEventListener("keydown", onKey) };
}

/** A field whose text was changed keeps the browser's own undo; one that was not is left to the page. */
function isBeingTyped(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement && target.type === "text" && target.value !== target.defaultValue;
}
