// Picking in drawings: every thing of the job in them carries its id.

/** Tells what is clicked in a drawing, and marks what is selected elsewhere. */
export class Picks {
  constructor(
    private readonly figure: HTMLElement,
    picked: (id: string | null) => void,
  ) {
    figure.addEventListener("click", (event) => {
      const thing = (event.target as Element).closest("[data-about]");
      if (thing) picked(thing.getAttribute("data-about"));
    });
  }

  mark(selected: string | null): void {
    for (const thing of this.figure.querySelectorAll("[data-about]")) {
      const about = thing.getAttribute("data-about")!;
      thing.classList.toggle("is-selected", selected !== null && (about === selected || about.startsWith(`${selected}.`)));
    }
  }
}
