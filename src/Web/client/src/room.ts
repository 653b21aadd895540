// The recess: faces that are seen only from inside it, so that one always looks in.

import {
  BufferGeometry,
  type Camera,
  Float32BufferAttribute,
  FrontSide,
  Group,
  LineBasicMaterial,
  LineLoop,
  Mesh,
  MeshBasicMaterial,
  Vector3,
} from "three";
import type { Face } from "./scene";
import type { Theme } from "./theme";

/** One face, with its outline; both go when one looks at its back. */
class Wall extends Group {
  private readonly normal: Vector3;
  private readonly corner: Vector3;

  constructor(face: Face, theme: Theme) {
    super();
    this.normal = new Vector3().fromArray(face.normal);
    this.corner = new Vector3().fromArray(face.positions);
    this.add(surface(face, theme), outline(face, theme));
  }

  turnTo(camera: Camera): void {
    this.visible = camera.position.clone().sub(this.corner).dot(this.normal) > 0;
  }
}

export class Room extends Group {
  private readonly walls: Wall[];

  constructor(faces: Face[], theme: Theme) {
    super();
    this.walls = faces.map((face) => new Wall(face, theme));
    if (this.walls.length > 0) this.add(...this.walls);
  }

  /** Leaves out what one would look at from behind. */
  turnTo(camera: Camera): void {
    for (const wall of this.walls) wall.turnTo(camera);
  }
}

function surface(face: Face, theme: Theme): Mesh {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new Float32BufferAttribute(face.positions, 3));
  geometry.setIndex(face.indices);
  const isThing = face.kind === "thing";
  const material = new MeshBasicMaterial({
    color: isThing ? theme.thing : face.kind === "floor" ? theme.floor : theme.wall,
    side: FrontSide,
    transparent: true,
    // A stud is behind the wall's face and only hinted at.
    opacity: face.what === "stud" ? 0.35 : 0.9,
    // A thing lies in the face of its wall, and a box may stand against it: the wall goes behind both.
    polygonOffset: true,
    polygonOffsetFactor: isThing ? 2 : 4,
    polygonOffsetUnits: isThing ? 2 : 4,
  });
  const mesh = new Mesh(geometry, material);
  mesh.renderOrder = isThing ? -1 : -2;
  return mesh;
}

function outline(face: Face, theme: Theme): LineLoop {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new Float32BufferAttribute(face.positions, 3));
  return new LineLoop(geometry, new LineBasicMaterial({ color: theme.roomLine }));
}
