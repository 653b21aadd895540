// The built-in in its room, in three dimensions. Drawn only when something changed.

import {
  Box3,
  DirectionalLight,
  Group,
  HemisphereLight,
  type Material,
  Mesh,
  LineSegments,
  LineLoop,
  Object3D,
  PerspectiveCamera,
  Raycaster,
  Scene as Stage,
  Vector2,
  Vector3,
  WebGLRenderer,
} from "three";
import { OrbitControls } from "three/examples/jsm/controls/OrbitControls.js";
import { Marking } from "./marking";
import { type Board, buildBoards } from "./panels";
import { Room } from "./room";
import type { Scene } from "./scene";
import { onThemeChange, readTheme, type Theme } from "./theme";

Object3D.DEFAULT_UP.set(0, 0, 1);

/** From where one looks at it, as a direction towards the eye. */
const looks: Record<string, [number, number, number]> = {
  corner: [-0.55, -1, 0.45],
  front: [0, -1, 0],
  above: [0, -0.02, 1],
  left: [-1, -0.25, 0.1],
  right: [1, -0.25, 0.1],
};

export class Viewer {
  private readonly renderer: WebGLRenderer;
  private readonly stage = new Stage();
  private readonly camera = new PerspectiveCamera(35, 1, 10, 60_000);
  private readonly controls: OrbitControls;
  private readonly marking = new Marking();
  private readonly watching: ResizeObserver;
  private readonly stopThemes: () => void;
  private theme: Theme = readTheme();
  private scene: Scene = { bounds: { low: [0, 0, 0], high: [0, 0, 0] }, panels: [], room: [] };
  private boards: Board[] = [];
  private content = new Group();
  private room = new Room([], this.theme);
  private hidden = new Set<string>();
  private selected: string | null = null;
  private apart = 0;
  private isAsked = false;
  private lookedFrom = "";
  private isPlaced = false;

  constructor(
    private readonly host: HTMLElement,
    private readonly picked: (id: string | null) => void,
  ) {
    this.renderer = new WebGLRenderer({ antialias: true });
    this.renderer.setPixelRatio(Math.min(2, devicePixelRatio));
    this.renderer.domElement.setAttribute("aria-hidden", "true");
    host.append(this.renderer.domElement);
    this.controls = new OrbitControls(this.camera, this.renderer.domElement);
    this.controls.addEventListener("change", () => this.ask());
    this.controls.zoomToCursor = true;
    this.light();
    this.listen();
    this.watching = new ResizeObserver(() => this.resize());
    this.watching.observe(host);
    this.stopThemes = onThemeChange(() => this.retheme());
    this.resize();
  }

  /** Shows a scene, written as JSON. */
  show(scene: string): void {
    this.scene = JSON.parse(scene) as Scene;
    this.rebuild();
    if (!this.isPlaced) this.look("corner");
    this.isPlaced = true;
  }

  select(id: string | null): void {
    this.selected = id;
    this.marking.mark(this.boards, id, this.theme);
    this.ask();
  }

  hide(ids: string[]): void {
    this.hidden = new Set(ids);
    for (const board of this.boards) board.visible = !this.hidden.has(board.panel.piece);
    this.ask();
  }

  pull(by: number): void {
    this.apart = by;
    for (const board of this.boards) board.pull(by);
    this.ask();
  }

  /** Looks from a named side, with everything in the picture. */
  look(from: string): void {
    this.lookedFrom = from;
    this.fit(new Vector3(...(looks[from] ?? looks.corner!)).normalize());
  }

  /** Everything in the picture, from where one is looking now. */
  fitNow(): void {
    this.fit(this.camera.position.clone().sub(this.controls.target).normalize());
  }

  close(): void {
    this.watching.disconnect();
    this.stopThemes();
    this.controls.dispose();
    this.clear();
    this.renderer.dispose();
    this.renderer.domElement.remove();
  }

  private rebuild(): void {
    this.clear();
    this.boards = buildBoards(this.scene.panels, this.theme);
    this.room = new Room(this.scene.room, this.theme);
    this.content = new Group().add(this.room, ...this.boards);
    this.stage.add(this.content);
    this.stage.background = this.theme.background;
    this.hide([...this.hidden]);
    this.pull(this.apart);
    this.select(this.selected);
  }

  private clear(): void {
    this.marking.clear();
    this.stage.remove(this.content);
    this.content.traverse((object) => {
      if (object instanceof Mesh || object instanceof LineSegments || object instanceof LineLoop) {
        object.geometry.dispose();
        (object.material as Material).dispose();
      }
    });
  }

  private light(): void {
    const sun = new DirectionalLight(0xffffff, 1.6);
    sun.position.set(-2, -4, 3);
    this.stage.add(new HemisphereLight(0xffffff, 0xb9b0a0, 1.7), sun);
  }

  private bounds(): Box3 {
    const box = new Box3();
    for (const board of this.boards) if (board.visible) box.expandByObject(board.body);
    box.expandByObject(this.room);
    return box;
  }

  private fit(towardsEye: Vector3): void {
    const box = this.bounds();
    if (box.isEmpty()) return;
    const target = box.getCenter(new Vector3());
    this.controls.target.copy(target);
    this.camera.position.copy(target).addScaledVector(towardsEye, this.distance(box, towardsEye));
    this.controls.update();
    this.ask();
  }

  /** How far the eye goes back until every corner of the box is in the picture. */
  private distance(box: Box3, towardsEye: Vector3): number {
    const centre = box.getCenter(new Vector3());
    const right = new Vector3(0, 0, 1).cross(towardsEye).normalize();
    const up = towardsEye.clone().cross(right);
    const tall = Math.tan((this.camera.fov * Math.PI) / 360);
    const wide = tall * this.camera.aspect;
    const away = cornersOfBox(box).map((corner) => {
      const from = corner.sub(centre);
      const needed = Math.max(Math.abs(from.dot(up)) / tall, Math.abs(from.dot(right)) / wide);
      return from.dot(towardsEye) + needed;
    });
    return Math.max(...away) * 1.04;
  }

  private resize(): void {
    const [width, height] = [this.host.clientWidth, this.host.clientHeight];
    if (width === 0 || height === 0) return;
    const wasFitted = this.isPlaced;
    this.camera.aspect = width / height;
    this.camera.updateProjectionMatrix();
    this.renderer.setSize(width, height);
    this.marking.resize(new Vector2(width, height));
    if (wasFitted) this.fitNow();
    this.ask();
  }

  private retheme(): void {
    this.theme = readTheme();
    this.rebuild();
  }

  private listen(): void {
    const canvas = this.renderer.domElement;
    let down = new Vector2();
    canvas.addEventListener("pointerdown", (event) => (down = new Vector2(event.clientX, event.clientY)));
    canvas.addEventListener("pointerup", (event) => {
      const moved = down.distanceTo(new Vector2(event.clientX, event.clientY));
      if (moved < 5 && event.button === 0) this.picked(this.at(event));
    });
    this.host.addEventListener("keydown", (event) => this.onKey(event));
  }

  private at(event: PointerEvent): string | null {
    const box = this.renderer.domElement.getBoundingClientRect();
    const spot = new Vector2(
      ((event.clientX - box.left) / box.width) * 2 - 1,
      1 - ((event.clientY - box.top) / box.height) * 2,
    );
    const ray = new Raycaster();
    ray.setFromCamera(spot, this.camera);
    const bodies = this.boards.filter((board) => board.visible).map((board) => board.body);
    const hit = ray.intersectObjects(bodies, false)[0];
    return hit ? (hit.object.userData.board as Board).panel.id : null;
  }

  private onKey(event: KeyboardEvent): void {
    const turns: Record<string, [number, number]> = {
      ArrowLeft: [-0.12, 0],
      ArrowRight: [0.12, 0],
      ArrowUp: [0, -0.12],
      ArrowDown: [0, 0.12],
    };
    const turn = turns[event.key];
    if (turn) this.turn(...turn);
    else if (event.key === "+" || event.key === "=") this.near(0.85);
    else if (event.key === "-") this.near(1 / 0.85);
    else if (event.key === "0") this.fitNow();
    else return;
    event.preventDefault();
  }

  private turn(around: number, over: number): void {
    const from = this.camera.position.clone().sub(this.controls.target);
    from.applyAxisAngle(new Vector3(0, 0, 1), around);
    const side = new Vector3(0, 0, 1).cross(from).normalize();
    const tipped = from.clone().applyAxisAngle(side, over);
    // Not over the top: there left and right would change places.
    if (Math.abs(tipped.clone().normalize().z) < 0.99) from.copy(tipped);
    this.camera.position.copy(this.controls.target).add(from);
    this.controls.update();
    this.ask();
  }

  private near(times: number): void {
    const from = this.camera.position.clone().sub(this.controls.target).multiplyScalar(times);
    this.camera.position.copy(this.controls.target).add(from);
    this.controls.update();
    this.ask();
  }

  private ask(): void {
    if (this.isAsked) return;
    this.isAsked = true;
    requestAnimationFrame(() => {
      this.isAsked = false;
      this.room.turnTo(this.camera);
      this.renderer.render(this.stage, this.camera);
      // Of the picture as it is drawn now: from here on a click is on what is seen.
      this.host.dataset.look = this.lookedFrom;
      this.host.dataset.shown = String(this.boards.filter((board) => board.visible).length);
    });
  }
}

function cornersOfBox(box: Box3): Vector3[] {
  const { min, max } = box;
  return [0, 1, 2, 3, 4, 5, 6, 7].map(
    (n) => new Vector3(n & 1 ? max.x : min.x, n & 2 ? max.y : min.y, n & 4 ? max.z : min.z),
  );
}
