// A drawing larger than its frame: by button, by key, by wheel with Ctrl (which is what a pinch on a touchpad sends).
// It moves in its frame as any scrolling does; a mouse can also take hold of it. On a screen that is touched, the
// browser's own pinch does for the whole page.

const steps = [1, 1.5, 2, 3, 4, 6];

/** So little is a click that trembled. */
const still = 4;

export class Zoom {
  private readonly until = new AbortController();
  private step = 0;

  constructor(
    private readonly figure: HTMLElement,
    private readonly tools: HTMLElement,
    private readonly sized: () => void,
  ) {
    const on = this.until;
    for (const button of this.buttons) button.addEventListener("click", () => this.by(Number(button.dataset.zoom)), on);
    figure.addEventListener("wheel", (event) => this.onWheel(event), { signal: on.signal, passive: false });
    figure.addEventListener("keydown", (event) => this.onKey(event), on);
    figure.addEventListener("pointerdown", (event) => this.hold(event), on);
  }

  /** Gives the drawing its size: a new drawing, or a new frame. */
  apply(): void {
    const drawing = this.figure.querySelector("svg");
    if (!drawing) return;
    // The frame stays as it is with the whole drawing in it.
    for (const one of [drawing, this.figure]) one.style.width = one.style.height = one.style.maxHeight = "";
    if (this.step > 0) {
      const [whole, frame] = [drawing.getBoundingClientRect(), this.figure.getBoundingClientRect()];
      this.figure.style.height = `${frame.height}px`;
      drawing.style.maxHeight = "none";
      drawing.style.width = `${whole.width * this.times}px`;
      drawing.style.height = `${whole.height * this.times}px`;
    }
    this.tell();
    this.sized();
  }

  close(): void {
    this.until.abort();
  }

  private get times(): number {
    return steps[this.step]!;
  }

  private get buttons(): NodeListOf<HTMLButtonElement> {
    return this.tools.querySelectorAll<HTMLButtonElement>("[data-zoom]");
  }

  private tell(): void {
    this.figure.classList.toggle("is-larger", this.step > 0);
    for (const button of this.buttons) {
      const isLarger = Number(button.dataset.zoom) > 0;
      // Not disabled, which would take the focus away from a key that is pressed again.
      if (isLarger) button.setAttribute("aria-disabled", String(this.step === steps.length - 1));
      else this.offer(button, this.step > 0);
    }
    const now = this.tools.querySelector("[data-zoom-now]");
    const text = this.step > 0 ? `${this.times * 100} %` : "";
    if (now && now.textContent !== text) now.textContent = text;
  }

  /** A whole drawing has nothing to make smaller: one press less on the way through the page. */
  private offer(smaller: HTMLButtonElement, isOffered: boolean): void {
    const hadFocus = document.activeElement === smaller;
    smaller.hidden = !isOffered;
    if (hadFocus && !isOffered) this.tools.querySelector<HTMLButtonElement>('[data-zoom="1"]')?.focus();
  }

  /** Some steps larger or smaller, about a point of the frame; about its middle when none is named. */
  private by(more: number, at = [this.figure.clientWidth / 2, this.figure.clientHeight / 2] as const): void {
    const before = this.times;
    this.step = Math.min(steps.length - 1, Math.max(0, this.step + more));
    const ratio = this.times / before;
    const { scrollLeft, scrollTop } = this.figure;
    this.apply();
    this.figure.scrollLeft = (scrollLeft + at[0]) * ratio - at[0];
    this.figure.scrollTop = (scrollTop + at[1]) * ratio - at[1];
  }

  private onWheel(event: WheelEvent): void {
    if (!event.ctrlKey || event.deltaY === 0) return;
    event.preventDefault();
    const frame = this.figure.getBoundingClientRect();
    this.by(event.deltaY < 0 ? 1 : -1, [event.clientX - frame.left, event.clientY - frame.top]);
  }

  private onKey(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "+" || event.key === "=") this.by(1);
    else if (event.key === "-") this.by(-1);
    else if (event.key === "0") this.by(-steps.length);
    else return;
    event.preventDefault();
  }

  private hold(down: PointerEvent): void {
    if (down.pointerType !== "mouse" || down.button !== 0 || this.step === 0) return;
    const { scrollLeft, scrollTop } = this.figure;
    const held = new AbortController();
    const move = (event: PointerEvent) => {
      const [x, y] = [event.clientX - down.clientX, event.clientY - down.clientY];
      // From here on the figure has the pointer, and its click picks nothing.
      if (Math.hypot(x, y) > still) this.figure.setPointerCapture(down.pointerId);
      this.figure.scrollLeft = scrollLeft - x;
      this.figure.scrollTop = scrollTop - y;
    };
    this.figure.addEventListener("pointermove", move, held);
    for (const end of ["pointerup", "pointercancel"]) this.figure.addEventListener(end, () => held.abort(), held);
  }
}
