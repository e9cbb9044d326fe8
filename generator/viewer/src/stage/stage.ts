// The unit in space.  The scene is in the unit frame, in mm, with z up.
import * as three from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";

import type { Model, Sections } from "../document";
import { drawn, type Drawn } from "./piece";

export interface Piece {
  ref: string;
  shape: string;
  surface: string;
  group: three.Group;
  mesh: three.Mesh<three.BufferGeometry, three.MeshStandardMaterial>;
}

const EDGE = new three.LineBasicMaterial({ color: 0x3a332b });

export class Stage {
  readonly scene = new three.Scene();
  readonly camera = new three.PerspectiveCamera(28, 1, 50, 60000);
  readonly renderer: three.WebGLRenderer;
  readonly controls: OrbitControls;
  readonly pieces = new Map<string, Piece>();
  private readonly shapes = new Map<string, Drawn>();
  private asked = 0;
  private framed = false;

  constructor(readonly canvas: HTMLCanvasElement) {
    this.renderer = new three.WebGLRenderer({ canvas, antialias: true });
    this.renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
    this.scene.background = new three.Color(0xf3f0ea);
    this.camera.up.set(0, 0, 1);
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.addEventListener("change", () => this.draw());
    this.scene.add(new three.HemisphereLight(0xffffff, 0xb9a98f, 2.2));
    const sun = new three.DirectionalLight(0xffffff, 1.6);
    sun.position.set(-0.5, -1, 1.2);
    this.scene.add(sun);
    new ResizeObserver(() => this.resize()).observe(canvas);
  }

  /** Show a model; pieces whose shape and surface stay are kept. */
  show(model: Model): void {
    const gone = new Set(this.pieces.keys());
    for (const part of model.parts) {
      gone.delete(part.ref);
      let piece = this.pieces.get(part.ref);
      if (piece?.shape !== part.shape || piece.surface !== part.surface) {
        piece?.group.removeFromParent();
        const shape = this.shapes.get(part.shape) ?? drawn(model.shapes[part.shape]!);
        this.shapes.set(part.shape, shape);
        const colour = model.surfaces[part.surface]?.colour ?? "#cccccc";
        const material = new three.MeshStandardMaterial({ color: colour, roughness: 0.55 });
        const mesh = new three.Mesh(shape.geometry, material);
        const group = new three.Group().add(mesh, new three.LineSegments(shape.edges, EDGE));
        group.matrixAutoUpdate = false;
        mesh.userData["ref"] = part.ref;
        piece = { ref: part.ref, shape: part.shape, surface: part.surface, group, mesh };
        this.pieces.set(part.ref, piece);
        this.scene.add(group);
      }
      piece.group.matrix.set(...(part.matrix as Parameters<three.Matrix4["set"]>));
      piece.group.userData["home"] = piece.group.matrix.clone();
    }
    for (const ref of gone) {
      this.pieces.get(ref)!.group.removeFromParent();
      this.pieces.delete(ref);
    }
    if (!this.framed) this.frame(model);
    this.draw();
  }

  /** Take the unit apart: 0 is whole, 1 wholly apart. */
  pull(apart: Sections["apart"], share: number): void {
    for (const [ref, piece] of this.pieces) {
      const [x, y, z] = apart?.[ref] ?? [0, 0, 0];
      const move = new three.Matrix4().makeTranslation(x * share, y * share, z * share);
      piece.group.matrix.multiplyMatrices(move, piece.group.userData["home"] as three.Matrix4);
    }
    this.draw();
  }

  /** The ref of the part at a point of the canvas (pixels from its top left). */
  at(x: number, y: number): string | null {
    const { width, height } = this.canvas.getBoundingClientRect();
    const ray = new three.Raycaster();
    ray.setFromCamera(new three.Vector2((x / width) * 2 - 1, 1 - (y / height) * 2), this.camera);
    const meshes = [...this.pieces.values()].map((piece) => piece.mesh);
    const [hit] = ray.intersectObjects(meshes, false);
    return (hit?.object.userData["ref"] as string | undefined) ?? null;
  }

  /** Draw a frame as soon as may be; asked often, drawn once. */
  draw(): void {
    this.asked ||= requestAnimationFrame(() => {
      this.asked = 0;
      this.renderer.render(this.scene, this.camera);
    });
  }

  private frame(model: Model): void {
    const box = new three.Box3(new three.Vector3(...model.low), new three.Vector3(...model.high));
    const middle = box.getCenter(new three.Vector3());
    const size = box.getSize(new three.Vector3()).length();
    this.controls.target.copy(middle);
    this.camera.position.copy(middle).add(new three.Vector3(-0.6, -1.9, 0.5).multiplyScalar(size));
    this.controls.update();
    this.framed = true;
  }

  private resize(): void {
    const { clientWidth: width, clientHeight: height } = this.canvas;
    if (!width || !height) return;
    this.renderer.setSize(width, height, false);
    this.camera.aspect = width / height;
    this.camera.updateProjectionMatrix();
    this.draw();
  }
}
