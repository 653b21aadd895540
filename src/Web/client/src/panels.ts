// Panels: boards with their edges drawn.

import {
  BufferGeometry,
  Float32BufferAttribute,
  Group,
  LineBasicMaterial,
  LineDashedMaterial,
  LineSegments,
  Mesh,
  MeshLambertMaterial,
  Vector3,
} from "three";
import type { Panel } from "./scene";
import type { Theme } from "./theme";

/** A panel in the view: everything drawn of it hangs below, and moves together when things are pulled apart. */
export class Board extends Group {
  readonly body: Mesh<BufferGeometry, MeshLambertMaterial>;

  constructor(
    readonly panel: Panel,
    wood: number,
    theme: Theme,
  ) {
    super();
    const material = new MeshLambertMaterial({
      color: theme.woods[wood % theme.woods.length],
      // Edges lie in the faces: faces go behind them.
      polygonOffset: true,
      polygonOffsetFactor: 1,
      polygonOffsetUnits: 1,
    });
    this.body = new Mesh(solid(panel), material);
    this.body.userData.board = this;
    this.add(this.body, edges(panel, theme));
  }

  /** True for a board of this panel or of this piece. */
  isOf(id: string): boolean {
    return this.panel.id === id || this.panel.piece === id;
  }

  /** Moves it a share of the way to where it goes when pulled apart. */
  pull(share: number): void {
    this.position.copy(new Vector3(...this.panel.explode)).multiplyScalar(share);
  }
}

export function buildBoards(panels: Panel[], theme: Theme): Board[] {
  const materials = [...new Set(panels.map((panel) => panel.material))].sort();
  return panels.map((panel) => new Board(panel, materials.indexOf(panel.material), theme));
}

function solid(panel: Panel): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new Float32BufferAttribute(panel.positions, 3));
  geometry.setIndex(panel.indices);
  geometry.computeVertexNormals();
  return geometry;
}

/** A held part has dashed edges, so that not only a colour tells it. */
function edges(panel: Panel, theme: Theme): LineSegments {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new Float32BufferAttribute(panel.edges, 3));
  if (!panel.held) return new LineSegments(geometry, new LineBasicMaterial({ color: theme.line }));
  const dashes = new LineDashedMaterial({ color: theme.line, dashSize: 22, gapSize: 14 });
  return new LineSegments(geometry, dashes).computeLineDistances();
}
