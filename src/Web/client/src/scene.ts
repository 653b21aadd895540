// What the program sends to be shown. Millimetres, in the room's frame: x to the right along the opening, y into the
// recess, z up. Points are flat lists x, y, z, x, y, z, …; triangles run anticlockwise as seen from outside.

/** One panel in place. */
export interface Panel {
  id: string;
  piece: string;
  letter: string;
  name: string;
  material: string;
  held: boolean;
  /** Where it goes when pulled all the way apart. */
  explode: number[];
  positions: number[];
  indices: number[];
  edges: number[];
}

/** A face of the room or of a thing on a wall, looking into the recess. */
export interface Face {
  id: string;
  kind: "wall" | "floor" | "ceiling" | "thing";
  what: string;
  /** One millimetre long, into the recess or out of the thing. */
  normal: number[];
  positions: number[];
  indices: number[];
}

export interface Scene {
  bounds: { low: number[]; high: number[] };
  panels: Panel[];
  room: Face[];
}
