// The selected panel or piece: tinted, and outlined with a thick line seen through everything.

import { Group, type Vector2 } from "three";
import { LineMaterial } from "three/examples/jsm/lines/LineMaterial.js";
import { LineSegments2 } from "three/examples/jsm/lines/LineSegments2.js";
import { LineSegmentsGeometry } from "three/examples/jsm/lines/LineSegmentsGeometry.js";
import type { Board } from "./panels";
import type { Theme } from "./theme";

export class Marking {
  private readonly drawn: { line: LineSegments2; under: Group }[] = [];
  private readonly material = new LineMaterial({ linewidth: 2.5, depthTest: false });

  mark(boards: Board[], selected: string | null, theme: Theme): void {
    this.clear();
    this.material.color = theme.selected;
    for (const board of boards) {
      const isSelected = selected !== null && board.isOf(selected);
      board.body.material.emissive.copy(theme.selected).multiplyScalar(isSelected ? 0.3 : 0);
      if (isSelected) this.outline(board);
    }
  }

  resize(size: Vector2): void {
    this.material.resolution.copy(size);
  }

  clear(): void {
    for (const { line, under } of this.drawn.splice(0)) {
      under.remove(line);
      line.geometry.dispose();
    }
  }

  private outline(board: Board): void {
    const geometry = new LineSegmentsGeometry().setPositions(board.panel.edges);
    const line = new LineSegments2(geometry, this.material);
    line.renderOrder = 10;
    // Not for the pointer: a thick line would catch picks meant for what is behind it.
    line.raycast = () => {};
    board.add(line);
    this.drawn.push({ line, under: board });
  }
}
