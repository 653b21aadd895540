// Everything of the page that runs in the browser.

import { Picks } from "./picks";
import { Viewer } from "./viewer";

interface DotNet {
  invokeMethodAsync(method: string, ...args: unknown[]): Promise<unknown>;
}

/** Opens a view in an element; the .NET side hears what is picked. */
export function openViewer(page: DotNet, host: HTMLElement): Viewer | null {
  try {
    return new Viewer(host, (id) => void page.invokeMethodAsync("Picked", id));
  } catch {
    // A browser without WebGL: the drawings and the list show the same.
    host.dataset.view = "none";
    return null;
  }
}

/** Makes the things in a drawing pickable, and the drawing larger where it has the buttons for it; the .NET side hears what is picked. */
export function listenForPicks(page: DotNet, figure: HTMLElement): Picks {
  const picks = new Picks(figure, (id) => void page.invokeMethodAsync("Picked", id));
  figure.dataset.listens = ""; // From now on a click is heard.
  return picks;
}

interface PageHalf {
  /** Brings what is selected into sight in the lists. */
  reveal: () => void;
  close: () => void;
}

/** Ctrl+Z, Ctrl+Shift+Z and Ctrl+Y anywhere on the page, but not in a field that is being typed in. */
export function openPage(page: DotNet): PageHalf {
  const until = new AbortController();
  // A field whose text was typed in and not yet taken keeps the browser's own undo.
  let typedIn: EventTarget | null = null;
  const onKey = (event: KeyboardEvent) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.target === typedIn) return;
    const key = event.key.toLowerCase();
    if (key !== "z" && key !== "y") return;
    event.preventDefault();
    void page.invokeMethodAsync(key === "y" || event.shiftKey ? "Redo" : "Undo");
  };
  addEventListener("keydown", onKey, until);
  addEventListener("input", (event) => (typedIn = event.target), until);
  addEventListener("change", () => (typedIn = null), until);
  return { reveal, close: () => until.abort() };
}

function reveal(): void {
  for (const chosen of document.querySelectorAll(".piece.is-selected, tr.is-selected")) {
    const list = chosen.closest(".pieces, .parts");
    // Only within its own list: the page itself stays where it is.
    if (!list || list.scrollHeight <= list.clientHeight) continue;
    const [outer, inner] = [list.getBoundingClientRect(), chosen.getBoundingClientRect()];
    if (inner.top < outer.top || inner.top > outer.bottom - 80) list.scrollTop += inner.top - outer.top - 16;
  }
}
