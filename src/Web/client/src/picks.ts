// Picking in drawings: every thing of the job in them carries its id.

import { Zoom } from "./zoom";

/** Tells what is clicked in a drawing, and marks what is selected elsewhere and what an edit has moved. */
export class Picks {
  private readonly watching: MutationObserver;
  private readonly measuring: ResizeObserver;
  private readonly zoom: Zoom | null;
  private selected: string | null = null;
  private moved = new Set<string>();

  constructor(
    private readonly figure: HTMLElement,
    picked: (id: string | null) => void,
  ) {
    figure.addEventListener("click", (event) => {
      const thing = (event.target as Element).closest("[data-about]");
      if (thing) picked(thing.getAttribute("data-about"));
    });
    // A new drawing takes the place of the old one when the job changes: it is made ready before it is seen.
    this.watching = new MutationObserver(() => this.ready());
    this.watching.observe(figure, { childList: true });
    const tools = figure.parentElement?.querySelector<HTMLElement>(":scope > .drawing-head > .zoom");
    this.zoom = tools ? new Zoom(figure, tools, () => this.letMove()) : null;
    let width = figure.clientWidth;
    this.measuring = new ResizeObserver(() => {
      // The zoom itself gives the frame its height: only another width is news.
      if (this.zoom && width !== figure.clientWidth) this.zoom.apply();
      width = figure.clientWidth;
      this.letMove();
    });
    this.measuring.observe(figure);
    this.ready();
  }

  mark(selected: string | null, moved: string[] = [...this.moved]): void {
    this.selected = selected;
    this.moved = new Set(moved);
    for (const thing of this.figure.querySelectorAll("[data-about]")) {
      const about = thing.getAttribute("data-about")!;
      thing.classList.toggle("is-selected", selected !== null && (about === selected || about.startsWith(`${selected}.`)));
      thing.classList.toggle("is-moved", this.moved.has(about));
    }
  }

  close(): void {
    this.watching.disconnect();
    this.measuring.disconnect();
    this.zoom?.close();
  }

  /** A drawing larger than its frame is moved in it, by keys too. */
  private letMove(): void {
    const { scrollWidth, scrollHeight, clientWidth, clientHeight } = this.figure;
    if (scrollWidth > clientWidth || scrollHeight > clientHeight) this.figure.tabIndex = 0;
    else this.figure.removeAttribute("tabindex");
  }

  private ready(): void {
    const drawing = this.figure.querySelector("svg");
    if (drawing) trim(drawing);
    this.zoom?.apply();
    this.mark(this.selected);
  }
}

const margin = 2;

/** Takes away the blank paper round a drawing, so that it is as large as the page allows. */
function trim(drawing: SVGSVGElement): void {
  const drawn = drawing.getBBox();
  if (drawn.width === 0 || drawn.height === 0) return;
  const box = [drawn.x - margin, drawn.y - margin, drawn.width + 2 * margin, drawn.height + 2 * margin];
  drawing.setAttribute("viewBox", box.map((number) => number.toFixed(2)).join(" "));
  drawing.removeAttribute("width");
  drawing.removeAttribute("height");
}
